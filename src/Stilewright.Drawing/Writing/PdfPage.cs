using Stilewright.Drawing.Scenes;

namespace Stilewright.Drawing.Writing;

/// <summary>One page, of the size of its scene.</summary>
/// <param name="Bookmarks">In the order of the reader's list of contents; all lead to the top of this page.</param>
public sealed record PdfPage(Scene Scene, IReadOnlyList<Bookmark> Bookmarks);

/// <summary>An entry of the list of contents beside the pages.</summary>
/// <param name="Level">1 for the outermost; an entry stands under the nearest one before it of a lower level.</param>
public sealed record Bookmark(string Title, int Level);
