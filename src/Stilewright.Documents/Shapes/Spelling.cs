using System.Text;

namespace Stilewright.Documents.Shapes;

/// <summary>How names of the program are spelled in documents and in sentences about them.</summary>
internal static class Spelling
{
    /// <summary><c>GrooveDepth</c> as a key: <c>grooveDepth</c>.</summary>
    public static string Key(string name) => char.ToLowerInvariant(name[0]) + name[1..];

    /// <summary><c>CopeAndStick</c> as a word: <c>cope-and-stick</c>.</summary>
    public static string Word(string name) => Split(name, '-');

    /// <summary><c>DoorDesign</c> in a sentence: <c>door design</c>.</summary>
    public static string InWords(Type type) => InWords(type.Name);

    /// <summary><c>GrooveDepth</c> in a sentence: <c>groove depth</c>.</summary>
    public static string InWords(string name) => Split(name, ' ');

    private static string Split(string name, char between)
    {
        StringBuilder text = new();
        foreach (var letter in name)
        {
            if (char.IsUpper(letter) && text.Length > 0)
                text.Append(between);
            text.Append(char.ToLowerInvariant(letter));
        }

        return text.ToString();
    }
}
