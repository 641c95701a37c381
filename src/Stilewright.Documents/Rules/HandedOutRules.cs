using Stilewright.Prints;

namespace Stilewright.Documents.Rules;

internal static class HandedOutRules
{
    public static IEnumerable<RuleFault> PartsStandOnce(HandedOut handedOut, DocumentPath path)
    {
        HashSet<string> seen = new(StringComparer.Ordinal);
        for (var project = 0; project < handedOut.Projects.Count; project++)
        {
            var parts = handedOut.Projects[project].Parts;
            for (var part = 0; part < parts.Count; part++)
            {
                if (!seen.Add(parts[part].Path))
                {
                    yield return new(path.Field("projects").Item(project).Field("parts").Item(part).Field("path"),
                        $"the part \"{Quote.Shown(parts[part].Path)}\" stands here twice", "keep one of the two");
                }
            }
        }
    }
}
