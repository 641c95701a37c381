using System.Reflection;

namespace Stilewright.Web.Desk;

/// <summary>The version of this program, such as 0.1.0.</summary>
public static class ProgramVersion
{
    public static string Text { get; } = Assembly.GetExecutingAssembly().GetName().Version!.ToString(3);
}
