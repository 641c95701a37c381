using Stilewright.Web.Desk;
using static Stilewright.Web.Storage.RevisionCause;

namespace Stilewright.Web.Tests.Desk;

public sealed class ProjectHistoryTests
{
    [Fact]
    public void How_a_document_began_is_not_taken_back()
    {
        Assert.Equal(ProjectHistory.Empty, ProjectHistory.Of([]));
        Assert.Equal(ProjectHistory.Empty, ProjectHistory.Of([(1, Edit)]));
        Assert.False(ProjectHistory.Of([(1, Import)]).CanUndo);
    }

    [Fact]
    public void The_last_change_is_taken_back_first_and_made_again_last()
    {
        Assert.Equal(new(3, null), ProjectHistory.Of([(1, Edit), (2, Edit), (3, Edit)]));
        Assert.Equal(new(2, 4), ProjectHistory.Of([(1, Edit), (2, Edit), (3, Edit), (4, Undo)]));
        Assert.Equal(new(null, 5), ProjectHistory.Of([(1, Edit), (2, Edit), (3, Edit), (4, Undo), (5, Undo)]));
        // Made again, it can be taken back again; what is taken back then is the redoing.
        Assert.Equal(new(6, 4), ProjectHistory.Of([(1, Edit), (2, Edit), (3, Edit), (4, Undo), (5, Undo), (6, Redo)]));
    }

    [Fact]
    public void A_new_change_ends_the_making_again() =>
        Assert.Equal(new(5, null), ProjectHistory.Of([(1, Edit), (2, Edit), (4, Undo), (5, Edit)]));

    [Fact]
    public void Restoring_is_a_change_like_any_other() =>
        Assert.Equal(new(4, null), ProjectHistory.Of([(2, Edit), (4, Restore)]));
}
