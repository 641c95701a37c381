using System.Globalization;
using Fractions;

namespace Stilewright.Measure;

/// <summary>Tells a worked quantity in words and in figures. Each line of figures can be calculated again by its reader.</summary>
/// <remarks>
/// Notation: <c>+ − × ÷</c>, parentheses, <c>x²</c>, <c>√(x)</c>, <c>the least of (a, b)</c>, <c>the greatest of (a, b)</c>, and
/// <c>x, down to a whole 1/32</c> (also <c>up to</c>, <c>to the nearest</c>) for a value put on a step. A mixed number
/// such as <c>2 1/4</c> is one figure. A figure rounded for printing is marked ≈.
/// </remarks>
public static class WorkedText
{
    private static readonly Fraction MillimetresPerInch = new(127, 5);

    /// <summary>The value as a figure: what lengths enter into in the reader's unit, all else in its base unit.</summary>
    public static string Figure(Worked quantity, LengthFormat format)
    {
        if (quantity.Dimension == Dimension.Length)
        {
            var text = format.Print(quantity.Length);
            return quantity.IsExact || text.StartsWith(LengthFormat.RoundedMark, StringComparison.Ordinal)
                ? text : LengthFormat.RoundedMark + text;
        }

        // Areas, volumes and moments follow the unit of the lengths they are made of, or their line could not be calculated again.
        return Decimal(format.Unit == LengthUnit.Millimetre
            ? quantity.Amount * Fraction.Pow(MillimetresPerInch, quantity.Dimension.PowerOfLength) : quantity.Amount, quantity.IsExact);
    }

    /// <summary>The quantity's expression in names, its own name left off.</summary>
    public static string Formula(Worked quantity) => Express(Unwrap(quantity), null).Text;

    /// <summary>The quantity's expression in figures, with its value: <c>12 3/16 − 2 × 2 1/4 + 2 × 7/16 = 8 9/16</c>.</summary>
    public static string Arithmetic(Worked quantity, LengthFormat format)
    {
        var expression = Express(Unwrap(quantity), format).Text;
        var figure = Figure(quantity, format);
        return expression == figure ? figure : $"{expression} = {figure}";
    }

    /// <summary>One line for the quantity: name, words and figures.</summary>
    public static string Line(Worked quantity, LengthFormat format) =>
        quantity is Named named && named.Inner.Operands.Count > 0
            ? $"{named.Label} = {Formula(named)}: {Arithmetic(named, format)}"
            : $"{Label(quantity)} {Arithmetic(quantity, format)}";

    /// <summary>What people call the quantity; an expression without a name is told by its formula.</summary>
    public static string Label(Worked quantity) => quantity switch
    {
        Named named => named.Label,
        Given given => given.Label,
        FromTable looked => looked.Label,
        _ => Formula(quantity),
    };

    /// <summary>All named steps that lead to the quantities, each once, in the order in which they can be worked.</summary>
    public static IReadOnlyList<WorkedStep> Steps(LengthFormat format, params IReadOnlyList<Worked> quantities)
    {
        var seen = new HashSet<Worked>(ReferenceEqualityComparer.Instance);
        var told = new HashSet<Named>();
        var steps = new List<WorkedStep>();
        foreach (var quantity in quantities)
            Visit(quantity);
        return steps;

        void Visit(Worked node)
        {
            if (!seen.Add(node))
                return;
            foreach (var operand in node.Operands)
                Visit(operand);
            if (node is Named named && told.Add(named))
                steps.Add(Step(named, format));
        }
    }

    /// <summary>One named step, told.</summary>
    public static WorkedStep Step(Named named, LengthFormat format)
    {
        var givens = new List<Worked>();
        var reasons = new List<string>();
        Gather(named.Inner);
        return new(named, Formula(named), Arithmetic(named, format), givens, reasons);

        void Gather(Worked node)
        {
            switch (node)
            {
                case Named:
                    return;
                case Given or FromTable:
                    if (!givens.Contains(node))
                        givens.Add(node);
                    return;
                case Chosen chosen:
                    if (!reasons.Contains(chosen.Reason))
                        reasons.Add(chosen.Reason);
                    break;
            }

            foreach (var operand in node.Operands)
                Gather(operand);
        }
    }

    // How tightly an expression holds together, loosest first; looser text needs parentheses inside tighter.
    private enum Binding
    {
        Phrase,
        Sum,
        Product,
        Power,
        Figure,
    }

    private readonly record struct Expression(string Text, Binding Binding)
    {
        public string Within(Binding binding) => Binding < binding ? $"({Text})" : Text;
    }

    private static Worked Unwrap(Worked quantity) => quantity is Named named ? named.Inner : quantity;

    private static Expression Express(Worked node, LengthFormat? format) => node switch
    {
        Named named => Atom(named, named.Label, format),
        Given given => Atom(given, given.Label, format),
        FromTable looked => Atom(looked, looked.Label, format),
        Number number => new(Decimal(number.Amount, true), number.Amount.IsNegative ? Binding.Sum : Binding.Figure),
        Sum sum => new($"{Express(sum.Left, format).Within(Binding.Sum)} + {Express(sum.Right, format).Within(Binding.Product)}", Binding.Sum),
        Difference difference => new(
            $"{Express(difference.Left, format).Within(Binding.Sum)} − {Express(difference.Right, format).Within(Binding.Product)}", Binding.Sum),
        Product product when product.Left is not Number && product.Left.Equals(product.Right) =>
            new($"{Express(product.Left, format).Within(format is null ? Binding.Figure : Binding.Figure + 1)}²", Binding.Power),
        Product product => new(
            $"{Express(product.Left, format).Within(Binding.Product)} × {Express(product.Right, format).Within(Binding.Power)}", Binding.Product),
        Quotient quotient => new(
            $"{Express(quotient.Left, format).Within(Binding.Product)} ÷ {Express(quotient.Right, format).Within(Binding.Power)}", Binding.Product),
        Least least => Listed("the least of", least, format),
        Greatest greatest => Listed("the greatest of", greatest, format),
        Chosen chosen => Express(chosen.Taken, format),
        Stepped { Moves: false } stepped => Express(stepped.Inner, format),
        Stepped stepped => new(
            $"{Express(stepped.Inner, format).Within(Binding.Sum)}, {Words(stepped.Direction)} {Express(stepped.Step, format).Within(Binding.Power)}",
            Binding.Phrase),
        SquareRoot root => new($"√({Express(root.Of, format).Text})", Binding.Power),
        _ => throw new ArgumentOutOfRangeException(nameof(node)),
    };

    private static Expression Atom(Worked node, string label, LengthFormat? format)
    {
        if (format is null)
            return new(label, Binding.Figure);
        var figure = Figure(node, format);
        // A negative figure inside an expression is held together by parentheses.
        return new(figure, node.Amount.IsNegative ? Binding.Sum : Binding.Figure);
    }

    private static Expression Listed(string words, Extreme extreme, LengthFormat? format) => new(
        $"{words} ({string.Join(", ", extreme.Of.Select(each => Express(each, format).Within(Binding.Sum)))})", Binding.Power);

    private static string Words(StepDirection direction) => direction switch
    {
        StepDirection.Down => "down to a whole",
        StepDirection.Up => "up to a whole",
        _ => "to the nearest",
    };

    private static string Decimal(Fraction amount, bool isExact)
    {
        // A coefficient such as 0.00369 would lose what matters at four.
        var places = Fraction.Abs(amount) < new Fraction(1, 100) ? 6 : 4;
        var rounded = Fraction.Round(amount, places, MidpointRounding.AwayFromZero);
        var text = rounded.ToDecimal().ToString("0.######", CultureInfo.InvariantCulture).Replace('-', '−');
        return isExact && rounded == amount ? text : LengthFormat.RoundedMark + text;
    }
}
