using Stilewright.Measure;
using Stilewright.Teaching.Checking;

namespace Stilewright.Documents.Lists;

/// <summary>A maker's list as it was read.</summary>
/// <param name="Unit">The unit of its bare numbers.</param>
/// <param name="Unread">Headings of columns that a cut list does not need, such as notes; nothing in them was read.</param>
public sealed record ReadList(MakersList List, LengthUnit Unit, IReadOnlyList<string> Unread);
