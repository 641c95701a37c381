using System.Globalization;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Rendering;
using Stilewright.Drawing.Letters;
using Stilewright.Drawing.Scenes;
using Stilewright.Drawing.Writing;

namespace Stilewright.Web.Drawings;

/// <summary>Shows a scene on a page: the same nodes that are printed, with the page's own colours, and parts that can be picked.</summary>
/// <remarks>Nodes are numbered by what they are and keyed by their path, so that a change of one size redraws only what moved.</remarks>
public sealed class SceneView : ComponentBase
{
    private int clips;

    /// <summary>What is drawn.</summary>
    [Parameter, EditorRequired] public required Scene Scene { get; set; }

    /// <summary>The path that is chosen; it and what lies under it stand out.</summary>
    [Parameter] public string? Chosen { get; set; }

    /// <summary>What can be picked, by path; the word is read to those who cannot see the drawing. Null where nothing can be.</summary>
    [Parameter] public Func<string, string?>? PickWord { get; set; }

    /// <summary>Class of a group by its path, such as <c>panel</c>; null for none.</summary>
    [Parameter] public Func<string, string?>? ClassOf { get; set; }

    [Parameter] public EventCallback<PickedEventArgs> Picked { get; set; }

    /// <summary>Whether a field stands in the place of a dimension's figure, where the screen has room for it.</summary>
    [Parameter] public Func<DimensionMark, bool>? IsEntered { get; set; }

    /// <summary>Tells this drawing's clips from those of others on the page.</summary>
    [Parameter] public string Name { get; set; } = "drawing";

    protected override void BuildRenderTree(RenderTreeBuilder builder)
    {
        clips = 0;
        builder.OpenElement(0, "svg");
        builder.AddAttribute(1, "class", "scene");
        builder.AddAttribute(2, "viewBox", $"0 0 {Number(Scene.WidthMillimetres)} {Number(Scene.HeightMillimetres)}");
        builder.AddAttribute(3, "role", PickWord is null ? "img" : "group");
        builder.AddAttribute(4, "aria-label", PickWord is null ? $"{Scene.Title}. {Scene.Description}" : Scene.Title);
        builder.AddAttribute(5, "preserveAspectRatio", "xMidYMid meet");
        if (Picked.HasDelegate)
            builder.AddAttribute(6, "onpicked", Picked);
        foreach (var node in Scene.Nodes)
            Node(builder, node);
        builder.CloseElement();
    }

    private void Node(RenderTreeBuilder page, SceneNode node)
    {
        switch (node)
        {
            case SceneGroup group:
                Group(page, group);
                break;
            case Shape shape when shape.Line is not null || shape.Fill != Tone.None:
                Path(page, shape.Line, shape.Fill, SvgPath.Of(shape.Outline), shape.Line is { } line ? SvgPath.Dashes(shape.Outline, line) : null, shape.Outline.IsClosed);
                break;
            case Hatch hatch:
                Path(page, LineStyle.Hatch, Tone.None, SvgPath.Of(hatch.Lines.Select(line => Outline.Line(line.From, line.To))), null);
                break;
            case CellGrid grid:
                Path(page, null, Tone.Ink, SvgPath.Of(grid.Bars), null);
                break;
            case DimensionMark mark:
                Dimension(page, mark);
                break;
            case Lettering lettering:
                Letters(page, lettering);
                break;
        }
    }

    private void Group(RenderTreeBuilder page, SceneGroup group)
    {
        page.OpenElement(10, "g");
        if (group.Path is { } path)
        {
            List<string> classes = [];
            if (ClassOf?.Invoke(path) is { } named)
                classes.Add(named);
            if (Chosen == path)
                classes.Add("chosen");
            if (classes.Count > 0)
                page.AddAttribute(11, "class", string.Join(' ', classes));
            if (PickWord?.Invoke(path) is { } word)
            {
                page.AddAttribute(12, "data-pick", path);
                page.AddAttribute(13, "tabindex", "0");
                page.AddAttribute(14, "role", "button");
                page.AddAttribute(15, "aria-label", word);
                page.AddAttribute(16, "aria-pressed", Chosen == path ? "true" : "false");
            }
            else
            {
                page.AddAttribute(17, "data-of", path);
            }
        }

        if (group.At is not { X: 0, Y: 0 })
            page.AddAttribute(18, "transform", $"translate({Number(group.At.X)} {Number(group.At.Y)})");
        if (group.Clip is { } clip)
        {
            var id = string.Create(CultureInfo.InvariantCulture, $"{Name}-clip-{++clips}");
            page.OpenElement(20, "clipPath");
            page.AddAttribute(21, "id", id);
            page.OpenElement(22, "rect");
            page.AddAttribute(23, "x", Number(clip.Left));
            page.AddAttribute(24, "y", Number(clip.Top));
            page.AddAttribute(25, "width", Number(clip.Width));
            page.AddAttribute(26, "height", Number(clip.Height));
            page.CloseElement();
            page.CloseElement();
            page.OpenElement(27, "g");
            page.AddAttribute(28, "clip-path", $"url(#{id})");
        }

        foreach (var child in group.Children)
            Node(page, child);
        if (group.Clip is not null)
            page.CloseElement();
        page.CloseElement();
    }

    private static void Path(RenderTreeBuilder page, LineStyle? line, Tone fill, string data, string? dashes, bool isShape = false)
    {
        page.OpenElement(30, "path");
        var tone = fill switch
        {
            Tone.Paper => "tone-paper",
            Tone.Tint => "tone-tint",
            Tone.Ink => "tone-ink",
            _ => null,
        };
        var style = line is { } drawn ? $"line {drawn.ToString().ToLowerInvariant()}" : null;
        page.AddAttribute(31, "class", string.Join(' ', new[] { isShape ? "shape" : null, style, tone }.Where(each => each is not null)));
        if (line is { } stroke)
            page.AddAttribute(32, "stroke-width", Number(stroke.WidthMillimetres));
        if (dashes is not null)
            page.AddAttribute(33, "stroke-dasharray", dashes);
        page.AddAttribute(34, "d", data);
        page.CloseElement();
    }

    private void Dimension(RenderTreeBuilder page, DimensionMark mark)
    {
        page.OpenElement(40, "g");
        page.AddAttribute(41, "class", IsEntered?.Invoke(mark) == true ? "dimension entered" : "dimension");
        if (mark.Path is { } path)
            page.AddAttribute(42, "data-of", path);
        if (mark.Strokes.Count > 0)
            Path(page, LineStyle.Dimension, Tone.None, SvgPath.Of(mark.Strokes), null);
        Letters(page, mark.Text);
        page.CloseElement();
    }

    private static void Letters(RenderTreeBuilder page, Lettering lettering)
    {
        if (lettering.Line.Runs.Count == 0)
            return;
        page.OpenElement(50, "text");
        page.AddAttribute(51, "transform", lettering.IsUpright
            ? $"translate({Number(lettering.At.X)} {Number(lettering.At.Y)})"
            : $"translate({Number(lettering.At.X)} {Number(lettering.At.Y)}) rotate(-90)");
        foreach (var run in lettering.Line.Runs)
        {
            page.OpenElement(52, "tspan");
            page.AddAttribute(53, "x", Number(run.Right));
            page.AddAttribute(54, "y", Number(-run.Up));
            page.AddAttribute(55, "font-size", Number(run.Style.SizeMillimetres));
            if (run.Style.Weight == Weight.Strong)
                page.AddAttribute(56, "font-weight", "600");
            page.AddAttribute(57, "textLength", Number(run.Width));
            page.AddAttribute(58, "lengthAdjust", "spacingAndGlyphs");
            page.AddContent(59, run.Text);
            page.CloseElement();
        }

        page.CloseElement();
    }

    private static string Number(double millimetres) => SvgPath.Number(millimetres);
}
