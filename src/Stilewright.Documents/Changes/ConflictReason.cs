namespace Stilewright.Documents.Changes;

/// <summary>Why a change cannot be put on a document that has moved on.</summary>
public enum ConflictReason
{
    /// <summary>Someone else has given the same place another value.</summary>
    ChangedSince,

    /// <summary>What was edited, or what it stood in, has been deleted.</summary>
    DeletedSince,

    /// <summary>The list has got more or fewer items, so that it is not certain which one is meant.</summary>
    ListChangedSince,

    /// <summary>A record with the same id stands in the document already.</summary>
    IdTaken,
}
