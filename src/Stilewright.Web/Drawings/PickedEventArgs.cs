namespace Stilewright.Web.Drawings;

/// <summary>What was picked in a drawing or table.</summary>
public sealed class PickedEventArgs : EventArgs
{
    /// <summary>The path of the thing.</summary>
    public string Path { get; set; } = "";
}
