using Fractions;
using Stilewright.Teaching.Worksheets;

namespace Stilewright.Tests.Teaching;

/// <summary>A maker who works a sheet from what is printed on it: the test's own calculator, apart from the program's.</summary>
/// <param name="sheet">With the figures told and results carried over by letter.</param>
internal sealed class Maker(Worksheet sheet)
{
    /// <summary>Added to the result of a line before it is written down and carried on; in inches.</summary>
    public Dictionary<string, Fraction> ResultSlips { get; } = [];

    /// <summary>Added to a figure as it is put in its place: letter of the line, and which figure of it from 1.</summary>
    public Dictionary<(string Letter, int Figure), Fraction> FigureSlips { get; } = [];

    /// <summary>What is written by the ids of blanks: of results, and of figures put in their places.</summary>
    public Dictionary<string, Fraction> Work()
    {
        Dictionary<string, Fraction> written = [];
        foreach (var line in sheet.Lines.Where(line => line.Pieces.Count > 0))
        {
            List<object> tokens = [];
            Dictionary<object, int> numbers = [];
            foreach (var piece in line.Pieces)
            {
                switch (piece)
                {
                    case LinePiece.Words words:
                        tokens.AddRange(words.Text.Replace("=", "").Where(sign => sign != ' ').Cast<object>());
                        break;
                    case LinePiece.Told told:
                        tokens.Add(Put(told.Quantity, told.Quantity.Amount));
                        break;
                    case LinePiece.Carried carried:
                        tokens.Add(Put(carried, written[carried.Letter]));
                        break;
                }
            }

            written[line.Letter] = new Calculator(tokens).Value() + ResultSlips.GetValueOrDefault(line.Letter);

            Fraction Put(object what, Fraction value)
            {
                if (!numbers.TryGetValue(what, out var number))
                    numbers[what] = number = numbers.Count + 1;
                return written[$"{line.Letter}{number}"] = value + FigureSlips.GetValueOrDefault((line.Letter, number));
            }
        }

        return written;
    }

    /// <summary>What is written, as texts for the blanks that another style of the same sheet has.</summary>
    public Dictionary<string, string> AnswersFor(Worksheet other)
    {
        var written = Work();
        // As a fraction without a whole number before it, which is as good an answer.
        return other.Blanks.ToDictionary(blank => blank.Id, blank => Text(written[blank.Id]));

        static string Text(Fraction value)
        {
            var lowest = value.Reduce();
            return lowest.Denominator.IsOne ? $"{lowest.Numerator} in" : $"{lowest.Numerator}/{lowest.Denominator} in";
        }
    }

    private sealed class Calculator(List<object> tokens)
    {
        private int at;

        public Fraction Value()
        {
            var value = Sum();
            Assert.Equal(tokens.Count, at);
            return value;
        }

        private Fraction Sum()
        {
            var value = Product();
            while (at < tokens.Count && tokens[at] is '+' or '−')
                value = tokens[at++] is '+' ? value + Product() : value - Product();
            return value;
        }

        private Fraction Product()
        {
            var value = Figure();
            while (at < tokens.Count && tokens[at] is '×' or '÷')
                value = tokens[at++] is '×' ? value * Figure() : value / Figure();
            return value;
        }

        private Fraction Figure()
        {
            switch (tokens[at++])
            {
                case Fraction figure:
                    return figure;
                case '(':
                    var value = Sum();
                    Assert.Equal(')', tokens[at++]);
                    return value;
                case char digit when char.IsAsciiDigit(digit):
                    var number = digit - '0';
                    while (at < tokens.Count && tokens[at] is char next && char.IsAsciiDigit(next))
                        (number, at) = (10 * number + next - '0', at + 1);
                    return number;
                case var other:
                    throw new InvalidOperationException($"A maker cannot work out '{other}'.");
            }
        }
    }
}
