using QRCoder;
using Stilewright.Drawing.Scenes;

namespace Stilewright.Drawing.Labels;

/// <summary>A QR code (ISO/IEC 18004) as ink on paper, with the four modules of white that readers ask for round it.</summary>
public static class QrMark
{
    /// <summary>Draws the code into a box; error correction M, so that dust and a scratch do no harm.</summary>
    /// <param name="text">Digits, capitals and <c>. - / : $ % * +</c> and spaces make the smallest code.</param>
    /// <param name="box">A square, the white round the code included.</param>
    public static IEnumerable<SceneNode> Draw(string text, PaperBox box)
    {
        using var generator = new QRCodeGenerator();
        using var code = generator.CreateQrCode(text, QRCodeGenerator.ECCLevel.M);
        var rows = code.ModuleMatrix;
        var module = box.Width / rows.Count;
        for (var row = 0; row < rows.Count; row++)
        {
            // One bar for every run of dark modules: fewer shapes, and no hairlines between neighbours.
            for (var from = 0; from < rows.Count;)
            {
                if (!rows[row][from])
                {
                    from++;
                    continue;
                }

                var to = from;
                while (to < rows.Count && rows[row][to])
                    to++;
                yield return new Shape(
                    Outline.Box(new(box.Left + from * module, box.Top + row * module, (to - from) * module, module)), null, Tone.Ink);
                from = to;
            }
        }
    }
}
