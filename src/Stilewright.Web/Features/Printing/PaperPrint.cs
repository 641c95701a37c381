using Stilewright.Drawing.Writing;
using Stilewright.Prints;

namespace Stilewright.Web.Features.Printing;

/// <summary>Something that goes to paper, laid out while its pages are taken.</summary>
/// <param name="What">In words, such as "Packet of bench 3".</param>
/// <param name="FileName">What the browser saves it as.</param>
/// <param name="HandedOut">What it tells people of sizes to be cut; null for exercises, which tell none.</param>
public sealed record PaperPrint(string What, string FileName, PdfFacts Facts, IEnumerable<PdfPage> Pages, HandedOut? HandedOut);
