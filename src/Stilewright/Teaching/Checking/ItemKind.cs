using Stilewright.Doors;

namespace Stilewright.Teaching.Checking;

/// <summary>What a word of a cut list may mean.</summary>
public enum ItemKind
{
    Stile,
    Rail,
    MidRail,
    MidStile,
    Panel,
    Glass,
    Slab,
    Leaf,
    DrawerFront,
    Front,
}

internal static class ItemKinds
{
    public static ItemKind Of(PartKind kind) => kind switch
    {
        PartKind.Stile => ItemKind.Stile,
        PartKind.Rail => ItemKind.Rail,
        PartKind.MidRail => ItemKind.MidRail,
        PartKind.MidStile => ItemKind.MidStile,
        PartKind.Panel => ItemKind.Panel,
        PartKind.Glass => ItemKind.Glass,
        _ => ItemKind.Slab,
    };
}
