using System.Collections.Immutable;
using ScoreRules.Language.Syntax;
using ScoreRules.Language.Syntax.Grammar;
using ScoreRules.Language.Syntax.Nodes;
using ScoreRules.Language.Text;

namespace ScoreRules.Language.Binding;

/// <summary>The targets that movements say they train, whether or not a house declares them.</summary>
public static class TrainedTargets
{
    /// <summary>Each target once, in the order of files and lines, with the first movement that trains it.</summary>
    public static ImmutableArray<(string Target, string FirstMovement)> In(IEnumerable<SourceText> files)
    {
        var found = new List<(string Target, string FirstMovement)>();
        foreach (var statement in files.SelectMany(file => SyntaxParser.Parse(file).Statements).Where(statement => statement.Spec == MovementGrammar.Movement && statement.First is not null))
        {
            foreach (var target in statement.Find(MovementGrammar.Trains)?.Content ?? [])
            {
                if (!found.Exists(known => NameText.Same(known.Target, target.Text)))
                {
                    found.Add((target.Text, statement.Head<NameSyntax>().Text));
                }
            }
        }

        return [.. found];
    }
}
