using System.Collections.Immutable;
using ScoreRules.Language.Diagnostics;
using ScoreRules.Language.Syntax.Grammar;
using ScoreRules.Language.Syntax.Nodes;
using ScoreRules.Language.Syntax.Tree;

namespace ScoreRules.Language.Binding.Building;

/// <summary>Binds loads: an external load, a band's pull by length, a cam's radius by angle.</summary>
internal sealed class LoadBinder(BindContext context)
{
    private const double MostKilograms = 2000;
    private const double MostNewtons = 20000;
    private readonly Sizes sizes = new(context);

    /// <summary>The load of a line, or null when it is not known or cannot be (which is reported).</summary>
    public GeometryLine? Load(ClauseSyntax<ValueSyntax> line, bool but, StatementSyntax statement)
    {
        if (!new Numbers(context).IsOneNumber(line.Content, statement))
        {
            return null;
        }

        var quantity = line.Content.First!;
        var isForce = quantity.Unit == "N";
        var amount = isForce
            ? sizes.Within(quantity, "N", "A load", 0, MostNewtons, statement)
            : sizes.Within(quantity, "kg", "A load", 0, MostKilograms, statement);
        return amount is { } number ? new GeometryLine.Load("external load", number, isForce, but, statement.At(line.Span)) : null;
    }

    /// <summary>The table of a line, or null when it cannot be (which is reported).</summary>
    public GeometryLine? Table(ClauseSyntax<PairSyntax[]> line, bool but, StatementSyntax statement)
    {
        var isBand = line.Spec == MovementGrammar.Band || line.Spec == MovementGrammar.ButBand;
        var pairs = line.Content.Select(pair => isBand ? Pull(pair, statement) : Radius(pair, statement)).ToList();
        if (pairs.Contains(null))
        {
            return null;
        }

        var table = pairs.Select(pair => pair!.Value).ToImmutableArray();
        return Rises(table, isBand, line, statement) ? new GeometryLine.Table(isBand ? "band" : "cam radius", table, but, statement.At(line.Span)) : null;
    }

    private (double At, double Value)? Pull(PairSyntax pair, StatementSyntax statement) =>
        sizes.Within(pair.Value, "N", "The pull of a band", 0, MostNewtons, statement) is { } pull
        && sizes.Within(pair.At, "m", "The length of a band", 0, 10, statement) is { } length ? (length, pull) : null;

    private (double At, double Value)? Radius(PairSyntax pair, StatementSyntax statement) =>
        sizes.Within(pair.Value, "m", "The radius of a cam", 0, 2, statement) is { } radius
        && sizes.Within(pair.At, "°", "The angle of a joint", -360, 360, statement) is { } angle ? (angle, radius) : null;

    private bool Rises(ImmutableArray<(double At, double Value)> table, bool isBand, ClauseSyntax<PairSyntax[]> line, StatementSyntax statement)
    {
        var steps = table.Zip(table.Skip(1)).ToList();
        var (headline, advice) = isBand
            ? ("A band pulls the harder the longer it is", "write two or more measured pulls, the shorter length first, such as \"band 0 N at 80 cm, 60 N at 140 cm\"")
            : ("A cam needs its radius at two or more angles, the smaller angle first", "write for example \"cam radius 12 cm at 10°, 8 cm at 130°\"");
        if (steps.Count > 0 && steps.TrueForAll(step => step.First.At < step.Second.At && (!isBand || step.First.Value <= step.Second.Value)) && (!isBand || table[^1].Value > table[0].Value))
        {
            return true;
        }

        context.Error("SR7205", headline, statement, line.Span, steps.Count == 0 ? "one pair only" : isBand ? "does not rise" : "angles do not rise", new Suggestion(advice));
        return false;
    }
}
