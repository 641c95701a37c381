using System.Text.RegularExpressions;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Rendering;

namespace Stilewright.Web.Shell;

/// <summary>A figure, or a sentence with figures: fractions are set as fractions, and no figure is broken at the end of a line.</summary>
/// <remarks>Copied or read aloud it stays plain text, such as <c>23 1/2</c>.</remarks>
public sealed partial class Fig : ComponentBase
{
    [Parameter, EditorRequired] public required string Text { get; set; }

    protected override void BuildRenderTree(RenderTreeBuilder builder)
    {
        builder.OpenElement(0, "span");
        builder.AddAttribute(1, "class", "fig");
        var text = WithinFigure().Replace(Text, "\u00a0");
        var at = 0;
        foreach (var fraction in Fraction().EnumerateMatches(text))
        {
            builder.AddContent(2, text[at..fraction.Index]);
            builder.OpenElement(3, "span");
            builder.AddAttribute(4, "class", "frac");
            at = fraction.Index + fraction.Length;
            builder.AddContent(5, text[fraction.Index..at]);
            builder.CloseElement();
        }

        builder.AddContent(6, text[at..]);
        builder.CloseElement();
    }

    [GeneratedRegex(@"(?<=\d) (?=\d+/\d|in\b|mm\b)")]
    private static partial Regex WithinFigure();

    [GeneratedRegex(@"(?<![\d/])\d{1,2}/\d{1,2}(?![\d/])")]
    private static partial Regex Fraction();
}
