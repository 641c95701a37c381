using QRCoder;
using Stilewright.Drawing.Scenes;

namespace Stilewright.Drawing.Labels;

/// <summary>A QR code (ISO/IEC 18004) as ink on paper, with the four modules of white that readers ask for round it.</summary>
public static class QrMark
{
    /// <summary>Draws the code into a box; error correction M, so that dust and a scratch do no harm.</summary>
    /// <param name="text">Digits, capitals and <c>. - / : $ % * +</c> and spaces make the smallest code.</param>
    /// <param name="box">A square, the white round the code included.</param>
    public static SceneNode Draw(string text, PaperBox box)
    {
        using var generator = new QRCodeGenerator();
        using var code = generator.CreateQrCode(text, QRCodeGenerator.ECCLevel.M);
        return new CellGrid(box, [.. code.ModuleMatrix.Select(row => (IReadOnlyList<bool>)[.. row.Cast<bool>()])]);
    }
}
