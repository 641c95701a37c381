using Stilewright.Projects;

namespace Stilewright.Web.Desk;

/// <summary>Edits of what people entered, found by ids. Each gives a new course and leaves what it does not find as it is.</summary>
public static class ProjectEdits
{
    public static Course WithProject(Course course, Func<Project, Project> edit) => course with { Projects = [.. course.Projects.Select(edit)] };

    public static Course WithPiece(Course course, string id, Func<Piece, Piece> edit) => WithProject(course, project => project with
    {
        Pieces = [.. project.Pieces.Select(piece => piece.Id == id ? edit(piece) : piece)],
    });

    public static Course WithFace(Course course, string id, Func<Face, Face> edit) => WithProject(course, project => project with
    {
        Pieces = [.. project.Pieces.Select(piece => piece with { Faces = [.. piece.Faces.Select(face => face.Id == id ? edit(face) : face)] })],
    });

    public static Course WithLayout(Course course, string faceId, Func<FaceLayout, FaceLayout> edit) =>
        WithFace(course, faceId, face => face.Layout is { } there ? face with { Layout = edit(there) } : face);

    /// <summary>Edits an opening, in a layout or measured without one.</summary>
    public static Course WithOpening(Course course, string id, Func<Opening, Opening> edit)
    {
        return WithProject(course, project => project with
        {
            Pieces = [.. project.Pieces.Select(piece => piece with { Faces = [.. piece.Faces.Select(InFace)] })],
        });

        Face InFace(Face face) => face with
        {
            Layout = face.Layout is { } there ? there with { Space = InSpace(there.Space) } : null,
            Openings = [.. face.Openings.Select(One)],
        };

        Space InSpace(Space space) => space with
        {
            Opening = space.Opening is { } there ? One(there) : null,
            Columns = InDivision(space.Columns),
            Rows = InDivision(space.Rows),
        };

        Division? InDivision(Division? division) => division is null ? null : division with { Spaces = [.. division.Spaces.Select(InSpace)] };

        Opening One(Opening opening) => opening.Id == id ? edit(opening) : opening;
    }

    /// <summary>Takes an opening away: its space of a layout is left open. What named it as a neighbour names nothing there any more.</summary>
    public static Course WithoutOpening(Course course, string id)
    {
        return WithProject(course, project => project with
        {
            Pieces = [.. project.Pieces.Select(piece => piece with { Faces = [.. piece.Faces.Select(InFace)] })],
            Accepted = [.. project.Accepted.Where(accepted => accepted.Place.Split('/')[0] != id)],
        });

        Face InFace(Face face) => face with
        {
            Layout = face.Layout is { } there ? there with { Space = InSpace(there.Space) } : null,
            Openings = [.. face.Openings.Where(opening => opening.Id != id).Select(Without)],
        };

        Space InSpace(Space space) => space with
        {
            Opening = space.Opening is { } there && there.Id != id ? Without(there) : null,
            Columns = InDivision(space.Columns),
            Rows = InDivision(space.Rows),
        };

        Division? InDivision(Division? division) => division is null ? null : division with { Spaces = [.. division.Spaces.Select(InSpace)] };

        Opening Without(Opening opening) => opening.Beside is not { } beside ? opening : opening with
        {
            Beside = new Surroundings(Kept(beside.Left), Kept(beside.Right), Kept(beside.Top), Kept(beside.Bottom)) is var kept && kept == new Surroundings() ? null : kept,
        };

        Beyond? Kept(Beyond? beyond) => beyond is NextOpening next && next.Opening == id ? null : beyond;
    }

    /// <summary>The space at a place within a layout: the position in each division, from the outside in.</summary>
    public static Course WithSpace(Course course, string faceId, IReadOnlyList<int> place, Func<Space, Space> edit) =>
        WithLayout(course, faceId, there => there with { Space = Within(there.Space, place, 0, edit) });

    /// <summary>Every opening of a course, those of layouts first within each face.</summary>
    public static IEnumerable<(Piece Piece, Face Face, Opening Opening)> Openings(Course course)
    {
        foreach (var project in course.Projects)
        {
            foreach (var piece in project.Pieces)
            {
                foreach (var face in piece.Faces)
                {
                    foreach (var opening in (face.Layout is null ? [] : In(face.Layout.Space)).Concat(face.Openings))
                        yield return (piece, face, opening);
                }
            }
        }
    }

    public static Opening? Opening(Course course, string id) =>
        Openings(course).Select(each => each.Opening).FirstOrDefault(opening => opening.Id == id);

    /// <summary>The space at a place within a layout; null where there is none.</summary>
    public static Space? SpaceAt(FaceLayout there, IReadOnlyList<int> place)
    {
        var space = there.Space;
        foreach (var position in place)
        {
            if ((space.Columns ?? space.Rows)?.Spaces is not { } spaces || position < 0 || position >= spaces.Count)
                return null;
            space = spaces[position];
        }

        return space;
    }

    /// <summary>The openings of a space and of what it is divided into.</summary>
    internal static IEnumerable<Opening> In(Space space) =>
        space.Opening is { } opening ? [opening] : (space.Columns ?? space.Rows)?.Spaces.SelectMany(In) ?? [];

    private static Space Within(Space space, IReadOnlyList<int> place, int depth, Func<Space, Space> edit)
    {
        if (depth == place.Count)
            return edit(space);
        return space with { Columns = Divided(space.Columns), Rows = Divided(space.Rows) };

        Division? Divided(Division? division) => division is null ? null : division with
        {
            Spaces = [.. division.Spaces.Select((each, index) => index == place[depth] ? Within(each, place, depth + 1, edit) : each)],
        };
    }
}
