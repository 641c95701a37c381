namespace Stilewright.Web.Fields;

/// <summary>What is typed into a field, or settled.</summary>
public sealed class FieldEventArgs : EventArgs
{
    public string Text { get; set; } = "";

    /// <summary>What the field said when the typing began.</summary>
    public string BasedOn { get; set; } = "";
}
