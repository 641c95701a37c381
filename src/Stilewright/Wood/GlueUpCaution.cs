using Stilewright.Findings;
using Stilewright.Measure;
using Stilewright.Shop;

namespace Stilewright.Wood;

/// <summary>What a machine may not be fed with, or only with care, in a glue-up.</summary>
/// <param name="Source">Where the limit comes from; the machine's manual and the instructor come first.</param>
public sealed record GlueUpCaution(FormattableString Problem, FormattableString Advice, Source Source)
{
    /// <summary>Narrower boards are pushed over a jointer with blocks: jointer manuals.</summary>
    private static readonly Length PushBlocks = Length.FromInches(3);

    /// <summary>What the staves, and the sections after them, ask of the shop's machines.</summary>
    public static IReadOnlyList<GlueUpCaution> Of(GlueUp glueUp, StandardInForce standard)
    {
        ArgumentNullException.ThrowIfNull(glueUp);
        ArgumentNullException.ThrowIfNull(standard);
        List<GlueUpCaution> cautions = [];
        var narrow = glueUp.Staves.Min(stave => stave.Rough);
        var wide = glueUp.Staves.Max(stave => stave.Rough);
        foreach (var machine in standard.Standard.Machines.Where(machine => machine.Kind is MachineKind.Jointer or MachineKind.Planer or MachineKind.Sander))
        {
            if (machine.Shortest is { } shortest && glueUp.Length < shortest.Value)
                cautions.Add(new($"The staves are {glueUp.Length} long; {machine.Name} takes nothing under {shortest.Value}.", $"Work them as longer boards and crosscut afterwards, or flatten by hand.", Rules.ShortForMachine.Source));
            if (machine.Narrowest is { } narrowest && narrow < narrowest.Value)
                cautions.Add(new($"The narrowest stave is {narrow} wide; {machine.Name} takes nothing under {narrowest.Value}.", $"Take wider staves, or joint a wider board and rip it afterwards.", Rules.NarrowForMachine.Source));
            if (machine is { Kind: MachineKind.Jointer, Widest: { } widest } && wide > widest.Value)
                cautions.Add(new($"The widest stave is {wide} wide; {machine.Name} flattens no face over {widest.Value}.", $"Rip it, or flatten one face by hand or on a sled through the planer.", Source.Published(machine.Source ?? Source.Shop.Text)));
        }

        if (narrow < PushBlocks)
            cautions.Add(new($"The narrowest stave is {narrow} wide.", $"Under {PushBlocks} feed it over the jointer with push blocks, never with the hands over the cutters.", Rules.NarrowForMachine.Source));
        if (glueUp.Limit is { } limit)
            cautions.Add(new($"Glued up whole it is {glueUp.Width} wide; {limit.Name} takes {limit.Widest!.Value.Value}.", $"Surface {glueUp.Sections} sections on their own and join them last.", Source.Published(limit.Source ?? Source.Shop.Text)));
        return cautions;
    }
}
