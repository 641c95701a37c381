using System.Globalization;
using System.Text;
using System.Xml;
using Stilewright.Drawing.Letters;
using Stilewright.Drawing.Scenes;

namespace Stilewright.Drawing.Writing;

/// <summary>Writes a scene as SVG, one user unit to the millimetre.</summary>
/// <remarks>
/// A group's id is its path as it is: an SVG 2 id may hold any character but white space. A path that occurs again, or that holds
/// white space, is only in <c>data-path</c>, which every group with a path has.
/// Every number is a whole count of 0.0001 mm. Places are rounded on the scene, not in their group, so that nested offsets add no error.
/// Looks are attributes, and hold without a style sheet; classes are the names of line styles in lower case. Strokes end square at
/// their ends, so that a stroke is as long as what it stands for, and meet in mitres, so that corners of wood look like corners.
/// </remarks>
public static class SvgWriter
{
    private const string Namespace = "http://www.w3.org/2000/svg";

    // No path holds an underscore, so these cannot be the id of a part.
    private const string TitleId = "drawing_title";
    private const string DescriptionId = "drawing_description";

    private static readonly XmlWriterSettings Settings = new()
    {
        Encoding = new UTF8Encoding(encoderShouldEmitUTF8Identifier: false),
        NewLineChars = "\n",
        NewLineHandling = NewLineHandling.Entitize,
        OmitXmlDeclaration = true,
    };

    /// <summary>Writes UTF-8.</summary>
    /// <param name="output">Is left open.</param>
    public static void Write(Scene scene, Stream output)
    {
        using var xml = XmlWriter.Create(output, Settings);
        new Walk(xml).Write(scene);
    }

    /// <param name="output">Is left open.</param>
    public static void Write(Scene scene, TextWriter output)
    {
        using var xml = XmlWriter.Create(output, Settings);
        new Walk(xml).Write(scene);
    }

    /// <summary>The whole file as text, to stand alone or within a page.</summary>
    public static string Text(Scene scene)
    {
        using var text = new StringWriter(CultureInfo.InvariantCulture);
        Write(scene, text);
        return text.ToString();
    }

    private sealed class Walk(XmlWriter xml)
    {
        private readonly HashSet<string> ids = [TitleId, DescriptionId];
        private int clips;

        public void Write(Scene scene)
        {
            var (width, height) = (SvgPlace.Number(scene.WidthMillimetres), SvgPlace.Number(scene.HeightMillimetres));
            xml.WriteStartElement("svg", Namespace);
            xml.WriteAttributeString("viewBox", $"0 0 {width} {height}");
            xml.WriteAttributeString("width", width + "mm");
            xml.WriteAttributeString("height", height + "mm");
            xml.WriteAttributeString("role", "img");
            xml.WriteAttributeString("aria-labelledby", $"{TitleId} {DescriptionId}");
            xml.WriteAttributeString("font-family", $"'{Typesetter.FamilyName}', 'Source Sans Pro', 'Noto Sans', Arial, sans-serif");
            xml.WriteAttributeString("style", "font-kerning: none; font-variant-ligatures: none");
            Element("title", scene.Title, TitleId);
            Element("desc", scene.Description, DescriptionId);
            Write(scene.Nodes, default);
            xml.WriteEndElement();
        }

        private void Write(IEnumerable<SceneNode> nodes, SvgPlace origin)
        {
            foreach (var node in nodes)
            {
                switch (node)
                {
                    case SceneGroup group:
                        Write(group, origin);
                        break;
                    case Shape shape:
                        Write(shape, origin);
                        break;
                    case Hatch hatch:
                        var lines = hatch.Lines;
                        if (lines.Count > 0)
                            Strokes(LineStyle.Hatch, [], data => { foreach (var (from, to) in lines) SvgPath.Append(data, Outline.Line(from, to), origin); });
                        break;
                    case CellGrid grid:
                        Write(grid, origin);
                        break;
                    case DimensionMark dimension:
                        Write(dimension, origin);
                        break;
                    case Lettering lettering:
                        Write(lettering, origin);
                        break;
                    default:
                        throw new ArgumentException($"A scene cannot hold a {node.GetType().Name}.", nameof(nodes));
                }
            }
        }

        private void Write(SceneGroup group, SvgPlace origin)
        {
            var own = new SvgPlace(origin.Exact + group.At);
            Begin("g");
            if (group.Path is { Length: > 0 } path)
            {
                path = Clean(path);
                if (!path.Any(char.IsWhiteSpace) && ids.Add(path))
                    xml.WriteAttributeString("id", path);
                xml.WriteAttributeString("data-path", path);
            }

            if (own.X != origin.X || own.Y != origin.Y)
                xml.WriteAttributeString("transform", $"translate({SvgPlace.Number(own.X - origin.X)} {SvgPlace.Number(own.Y - origin.Y)})");
            if (group.Title is { } title)
                Element("title", title, id: null);
            if (group.Clip is { } clip)
                Clip(clip, own);
            Write(group.Children, own);
            xml.WriteEndElement();
            if (group.Clip is not null)
                xml.WriteEndElement();
        }

        private void Clip(PaperBox box, SvgPlace origin)
        {
            var name = string.Create(CultureInfo.InvariantCulture, $"shown_{++clips}");
            Begin("clipPath");
            xml.WriteAttributeString("id", name);
            Begin("path");
            var data = new StringBuilder();
            SvgPath.Append(data, Outline.Box(box), origin);
            xml.WriteAttributeString("d", data.ToString());
            xml.WriteEndElement();
            xml.WriteEndElement();
            Begin("g");
            xml.WriteAttributeString("clip-path", $"url(#{name})");
        }

        private void Write(Shape shape, SvgPlace origin)
        {
            if (shape.Line is null && shape.Fill == Tone.None)
                return;
            Begin("path");
            if (shape.Line is { } line)
                Look(line, DashFit.For(shape.Outline, line));
            xml.WriteAttributeString("fill", shape.Fill switch
            {
                Tone.None => "none",
                Tone.Paper => Inks.Paper,
                Tone.Tint => Inks.Tint,
                _ => Inks.Ink,
            });
            var data = new StringBuilder();
            SvgPath.Append(data, shape.Outline, origin);
            xml.WriteAttributeString("d", data.ToString());
            xml.WriteEndElement();
        }

        private void Write(CellGrid grid, SvgPlace origin)
        {
            Begin("path");
            xml.WriteAttributeString("fill", Inks.Ink);
            var data = new StringBuilder();
            foreach (var bar in grid.Bars)
                SvgPath.Append(data, bar, origin);
            xml.WriteAttributeString("d", data.ToString());
            xml.WriteEndElement();
        }

        private void Write(DimensionMark dimension, SvgPlace origin)
        {
            Begin("g");
            xml.WriteAttributeString("class", "dimension");
            if (dimension.Path is { Length: > 0 } path)
                xml.WriteAttributeString("data-path", Clean(path));
            if (dimension.Strokes.Count > 0)
                Strokes(LineStyle.Dimension, [], data => { foreach (var stroke in dimension.Strokes) SvgPath.Append(data, stroke, origin); });
            Write(dimension.Text, origin);
            xml.WriteEndElement();
        }

        private void Write(Lettering lettering, SvgPlace origin)
        {
            if (lettering.Line.Runs.Count == 0)
                return;
            var at = new SvgPlace(origin.Exact + lettering.At);
            Begin("text");
            xml.WriteAttributeString("fill", Inks.Ink);
            // Keeps spaces at the ends of runs as they are.
            xml.WriteAttributeString("xml", "space", null, "preserve");
            if (!lettering.IsUpright)
                xml.WriteAttributeString("transform", $"translate({SvgPlace.Number(at.X - origin.X)} {SvgPlace.Number(at.Y - origin.Y)}) rotate(-90)");
            foreach (var run in lettering.Line.Runs)
            {
                var place = new SvgPlace(at.Exact + (lettering.IsUpright ? new(run.Right, -run.Up) : new PaperPoint(-run.Up, -run.Right)));
                var (right, down) = lettering.IsUpright
                    ? (place.X - origin.X, place.Y - origin.Y)
                    : (at.Y - place.Y, place.X - at.X);
                xml.WriteStartElement("tspan", Namespace);
                xml.WriteAttributeString("x", SvgPlace.Number(right));
                xml.WriteAttributeString("y", SvgPlace.Number(down));
                xml.WriteAttributeString("font-size", SvgPlace.Number(run.Style.SizeMillimetres));
                xml.WriteAttributeString("font-weight", run.Style.Weight == Weight.Strong ? "600" : "400");
                xml.WriteAttributeString("textLength", SvgPlace.Number(run.Width));
                xml.WriteAttributeString("lengthAdjust", "spacingAndGlyphs");
                xml.WriteString(Clean(run.Text));
                xml.WriteEndElement();
            }

            xml.WriteEndElement();
        }

        private void Strokes(LineStyle style, IReadOnlyList<double> dashes, Action<StringBuilder> draw)
        {
            Begin("path");
            Look(style, dashes);
            xml.WriteAttributeString("fill", "none");
            var data = new StringBuilder();
            draw(data);
            xml.WriteAttributeString("d", data.ToString());
            xml.WriteEndElement();
        }

        private void Look(LineStyle style, IReadOnlyList<double> dashes)
        {
            xml.WriteAttributeString("class", style.ToString().ToLowerInvariant());
            xml.WriteAttributeString("stroke", Inks.Ink);
            xml.WriteAttributeString("stroke-width", SvgPlace.Number(style.WidthMillimetres));
            if (dashes.Count > 0)
                xml.WriteAttributeString("stroke-dasharray", string.Join(' ', dashes.Select(SvgPlace.Number)));
            xml.WriteAttributeString("stroke-linecap", "butt");
            xml.WriteAttributeString("stroke-linejoin", "miter");
            xml.WriteAttributeString("stroke-miterlimit", SvgPlace.Number(Inks.MitreLimit));
        }

        private void Element(string name, string text, string? id)
        {
            Begin(name);
            if (id is not null)
                xml.WriteAttributeString("id", id);
            xml.WriteString(Clean(text));
            xml.WriteEndElement();
        }

        // Every element begins a line but the runs of a text, where a line break would be read as a space.
        private void Begin(string name)
        {
            xml.WriteWhitespace("\n");
            xml.WriteStartElement(name, Namespace);
        }

        // XML cannot hold control characters, nor half a surrogate pair.
        private static string Clean(string text)
        {
            const char Replacement = '\uFFFD';
            StringBuilder? clean = null;
            for (var i = 0; i < text.Length; i++)
            {
                var isPair = i + 1 < text.Length && char.IsSurrogatePair(text[i], text[i + 1]);
                if (isPair)
                    i++;
                else if (!XmlConvert.IsXmlChar(text[i]))
                    (clean ??= new StringBuilder(text))[i] = Replacement;
            }

            return clean?.ToString() ?? text;
        }
    }
}
