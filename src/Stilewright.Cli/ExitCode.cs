namespace Stilewright.Cli;

/// <summary>What the program tells the shell that started it. Stable: scripts lean on these.</summary>
internal static class ExitCode
{
    /// <summary>Nothing worse than notes, cautions and hazards that were accepted.</summary>
    public const int Good = 0;

    /// <summary>A hazard was found that nobody accepted; only <c>check</c> says so.</summary>
    public const int HazardsOpen = 1;

    /// <summary>Some leaf cannot be built; only <c>check</c> says so.</summary>
    public const int CannotBuild = 2;

    /// <summary>A file cannot be read, used or written.</summary>
    public const int FileFailed = 3;

    /// <summary>Something is no longer as it was handed out; only <c>changes</c> says so.</summary>
    public const int Changed = 4;

    /// <summary>A maker's list is not right; only <c>mark</c> says so.</summary>
    public const int ListWrong = 5;

    /// <summary>Hinge screws alone do not make the gaps even; only <c>adjust</c> says so.</summary>
    public const int NotEven = 6;

    /// <summary>A leaf is bored wrong; only <c>bored</c> says so.</summary>
    public const int BoredWrong = 7;

    /// <summary>Stopped with Ctrl+C, as shells count it.</summary>
    public const int Stopped = 130;

    /// <summary>Wrong use of the command line.</summary>
    public const int WrongUse = 64;

    /// <summary>A fault of the program itself.</summary>
    public const int ProgramFault = 70;
}
