using Stilewright.Drawing.Scenes;
using Stilewright.Drawing.Writing;

namespace Stilewright.Drawing.Packets;

/// <summary>One printed sheet of a packet.</summary>
/// <param name="Bookmarks">What begins on it, for the reader's list of contents.</param>
public sealed record Sheet(Scene Scene, IReadOnlyList<Bookmark> Bookmarks);
