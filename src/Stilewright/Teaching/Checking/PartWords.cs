namespace Stilewright.Teaching.Checking;

/// <summary>What a maker's own name for a part may mean.</summary>
/// <param name="Kinds">The kinds it may mean; empty where nothing is known of the word.</param>
/// <param name="Places">Words of place in it: top, bottom, left, right.</param>
/// <param name="Numbers">Numbers in it, such as those of lights.</param>
internal sealed record PartWords(IReadOnlySet<ItemKind> Kinds, IReadOnlySet<string> Places, IReadOnlySet<int> Numbers)
{
    // These say where a part is, or what it is in, unless nothing else tells what it is.
    private static readonly HashSet<string> Weak = ["top", "bottom", "end", "side", "arch", "arched", "centre", "center", "door", "leaf", "drawer", "front", "pair"];


    // The trade's words and those of people who do not know them yet; common practice, no source.
    private static readonly (string Word, ItemKind[] Kinds)[] Known =
    [
        ("stile", [ItemKind.Stile, ItemKind.MidStile]), ("style", [ItemKind.Stile, ItemKind.MidStile]),
        ("upright", [ItemKind.Stile, ItemKind.MidStile]), ("vertical", [ItemKind.Stile, ItemKind.MidStile]),
        ("side", [ItemKind.Stile]), ("leg", [ItemKind.Stile]), ("post", [ItemKind.Stile]),
        ("rail", [ItemKind.Rail, ItemKind.MidRail]), ("horizontal", [ItemKind.Rail, ItemKind.MidRail]), ("cross", [ItemKind.Rail, ItemKind.MidRail]),
        ("crosspiece", [ItemKind.Rail, ItemKind.MidRail]), ("crossbar", [ItemKind.Rail, ItemKind.MidRail]),
        ("end", [ItemKind.Rail]), ("top", [ItemKind.Rail]), ("bottom", [ItemKind.Rail]), ("header", [ItemKind.Rail]), ("arch", [ItemKind.Rail]), ("arched", [ItemKind.Rail]),
        ("midrail", [ItemKind.MidRail]), ("lockrail", [ItemKind.MidRail]), ("midstile", [ItemKind.MidStile]),
        ("muntin", [ItemKind.MidStile, ItemKind.MidRail]), ("mullion", [ItemKind.MidStile]), ("montant", [ItemKind.MidStile]), ("divider", [ItemKind.MidRail, ItemKind.MidStile]), ("bar", [ItemKind.MidRail, ItemKind.MidStile]),
        ("panel", [ItemKind.Panel]), ("field", [ItemKind.Panel]), ("infill", [ItemKind.Panel, ItemKind.Glass]), ("filling", [ItemKind.Panel, ItemKind.Glass]), ("insert", [ItemKind.Panel, ItemKind.Glass]), ("centre", [ItemKind.Panel]), ("center", [ItemKind.Panel]), ("ply", [ItemKind.Panel]), ("plywood", [ItemKind.Panel]),
        ("glass", [ItemKind.Glass]), ("pane", [ItemKind.Glass]), ("glazing", [ItemKind.Glass]), ("mirror", [ItemKind.Glass]),
        ("slab", [ItemKind.Slab]), ("blank", [ItemKind.Slab]),
        ("door", [ItemKind.Leaf]), ("leaf", [ItemKind.Leaf]), ("flap", [ItemKind.Leaf]),
        ("drawer", [ItemKind.DrawerFront]), ("drawerfront", [ItemKind.DrawerFront]),
        ("front", [ItemKind.Front, ItemKind.DrawerFront]), ("pair", [ItemKind.Front]), ("doors", [ItemKind.Front, ItemKind.Leaf]),
    ];

    private static readonly (string Word, string Place)[] KnownPlaces =
    [
        ("top", "top"), ("upper", "top"), ("head", "top"), ("bottom", "bottom"), ("lower", "bottom"), ("foot", "bottom"), ("left", "left"), ("lh", "left"), ("right", "right"), ("rh", "right"),
        ("mid", "mid"), ("middle", "mid"), ("centre", "mid"), ("center", "mid"), ("lock", "mid"), ("intermediate", "mid"),
    ];

    public static PartWords Of(string name)
    {
        var words = name.ToLowerInvariant().Split([' ', '\t', ',', '.', '-', '_', '/', '(', ')', ':', ';', '&', '+', '#'], StringSplitOptions.RemoveEmptyEntries);
        var numbers = words.Select(word => int.TryParse(word, out var read) ? read : -1).Where(read => read >= 0).ToHashSet();
        // "mid rail 2 from the bottom" is counted from there and does not lie there.
        words = [.. words.TakeWhile(word => word != "from")];
        var places = new HashSet<string>(words.SelectMany(word => KnownPlaces.Where(known => known.Word == word).Select(known => known.Place)));
        // The last word that names a part says what it is: a "door panel" is a panel, a "rail, top" a rail; "top" alone is one too.
        var found = words.Select(word => (IsWeak: Weak.Contains(word) || Weak.Contains(word.TrimEnd('s')), Kinds: Kind(word))).Where(each => each.Kinds.Length > 0).ToList();
        var told = found.Where(each => !each.IsWeak).Select(each => each.Kinds).LastOrDefault() ?? found.Select(each => each.Kinds).LastOrDefault() ?? [];
        var kinds = new HashSet<ItemKind>(told);
        if (places.Remove("mid"))
        {
            if (kinds.Contains(ItemKind.Stile))
                kinds = [ItemKind.MidStile];
            else if (kinds.Contains(ItemKind.Rail))
                kinds = [ItemKind.MidRail];
        }

        if (kinds.Contains(ItemKind.Front) && words.Any(word => word is "drawer" or "drawers"))
            kinds = [ItemKind.DrawerFront];
        return new(kinds, places, numbers);
    }

    private static ItemKind[] Kind(string word)
    {
        foreach (var form in (string[])[word, word.TrimEnd('s'), word.EndsWith("es", StringComparison.Ordinal) ? word[..^2] : word])
        {
            if (Known.FirstOrDefault(known => known.Word == form) is { Kinds: { } kinds })
                return kinds;
        }

        return [];
    }

    /// <summary>How badly the words go with an item: 0 where they name it, 1 where they say nothing, more where they name something else.</summary>
    public double Misfit(KeyItem item)
    {
        var kind = Kinds.Count == 0 ? 1 : Kinds.Contains(item.Kind) ? Kinds.Count > 1 && item.Kind is ItemKind.MidRail or ItemKind.MidStile ? 0.2 : 0 : 2.2;
        var wrongPlace = Places.Any(place => place is "top" or "bottom" or "left" or "right" && Names(item, Opposite(place)));
        var rightPlace = Places.Any(place => Names(item, place));
        var ofNumber = Numbers.Count == 0 || NumberOf(item.Name) is not { } own ? 0 : Numbers.Contains(own) ? -0.3 : 0.3;
        return kind + (wrongPlace ? 0.6 : 0) - (rightPlace ? 0.1 : 0) + ofNumber;
    }

    private static bool Names(KeyItem item, string place) => item.Part is not null && item.Path.EndsWith('.' + place, StringComparison.Ordinal);

    private static int? NumberOf(string name) =>
        name.Split(' ').Select(word => int.TryParse(word, out var read) ? read : (int?)null).FirstOrDefault(read => read is not null);

    private static string Opposite(string place) => place switch
    {
        "top" => "bottom",
        "bottom" => "top",
        "left" => "right",
        _ => "left",
    };
}
