using Stilewright.Documents.Lists;
using Stilewright.Teaching.Checking;
using Stilewright.Teaching.Reuse;
using Stilewright.Teaching.Telling;

namespace Stilewright.Cli.Pages;

/// <summary>A maker's list with its answer.</summary>
/// <param name="For">What it is for, such as "leaf 7·2L, left door".</param>
/// <param name="Reuses">What the wrong pieces can still become; empty where they are not cut.</param>
internal sealed record MarkedList(string For, ReadList Read, CheckedList Found, Answer Answer, IReadOnlyList<(ListLine Line, ReuseAdvice Advice)> Reuses);
