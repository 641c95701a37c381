using System.Text.Json.Nodes;
using Stilewright.Shop;

namespace Stilewright.Web.Desk;

/// <summary>A house standard as it stands at one moment.</summary>
/// <param name="Key">Of its document in the store.</param>
/// <param name="Head">The number of its newest revision.</param>
/// <param name="Tree">The standard as files hold it; not to be changed.</param>
public sealed record OpenStandard(long Key, int Head, JsonObject Tree, HouseStandard Standard);
