using Stilewright.Drawing.Labels;
using Stilewright.Drawing.Scenes;

namespace Stilewright.Web.Features.Others;

/// <summary>An address as a code that a phone's camera reads.</summary>
public static class QrScene
{
    private const double SideMillimetres = 40;

    public static Scene Of(string address) => new($"Code of the address {address}", "", SideMillimetres, SideMillimetres,
        [QrMark.Draw(address, new(0, 0, SideMillimetres, SideMillimetres))]);
}
