using System.Collections.Immutable;
using ScoreRules.Language.Diagnostics;
using ScoreRules.Language.Syntax.Grammar;
using ScoreRules.Language.Syntax.Nodes;
using ScoreRules.Language.Syntax.Tree;
using ScoreRules.Language.Text;

namespace ScoreRules.Language.Binding.Building;

/// <summary>Binds personal judgements.</summary>
internal sealed class PlaceBinder(BindContext context, InfoBinder info)
{
    private static readonly (ClauseSpec<NameSyntax> Spec, PlaceKind Kind)[] ByAnother =
        [(MovementGrammar.JustBelow, PlaceKind.JustBelow), (MovementGrammar.JustAbove, PlaceKind.JustAbove), (MovementGrammar.Beside, PlaceKind.Beside)];

    private static readonly (ClauseSpec Spec, PlaceKind Kind)[] ByTier = [(MovementGrammar.OneTierHigher, PlaceKind.OneTierHigher), (MovementGrammar.OneTierLower, PlaceKind.OneTierLower)];

    /// <summary>All judgements whose names could be resolved.</summary>
    public ImmutableArray<PlaceDefinition> Bind(IEnumerable<StatementSyntax> statements)
    {
        var places = statements.Where(statement => statement.Spec == MovementGrammar.Place && statement.First is not null).SelectMany(BindOne).ToImmutableArray();
        foreach (var pair in places.GroupBy(place => NameText.Key(place.Movement), StringComparer.Ordinal).Where(group => group.Count() > 1).Select(group => group.ToList()))
        {
            ReportTwice(pair);
        }

        ReportCircle(places);
        return places;
    }

    // "A just below B" and "B just below A" leave nobody to begin with.
    private void ReportCircle(ImmutableArray<PlaceDefinition> places)
    {
        var by = places.Where(place => place.Other is not null).GroupBy(place => NameText.Key(place.Movement), StringComparer.Ordinal).ToDictionary(group => group.Key, group => group.First(), StringComparer.Ordinal);
        foreach (var place in by.Values.OrderBy(place => place.Info.Location, Comparer<SourceLocation>.Create(SourceLocation.Compare)))
        {
            var (at, seen) = (place, new HashSet<string>(StringComparer.Ordinal));
            while (seen.Add(NameText.Key(at.Movement)) && by.TryGetValue(NameText.Key(at.Other!), out var next))
            {
                at = next;
            }

            if (seen.Count > 1 && by.ContainsKey(NameText.Key(at.Other!)))
            {
                context.Findings.Add(new Diagnostic("SR5021", Severity.Error, $"The judgement about \"{at.Movement}\" goes round in a circle", new Label(at.Info.Location, "placed by one that is placed by it"))
                {
                    Suggestions = [new Suggestion("place one of them by a movement that no judgement places")],
                });
                return;
            }
        }
    }

    private List<PlaceDefinition> BindOne(StatementSyntax statement)
    {
        var own = statement.Head<NameSyntax>();
        var movement = context.Movements.Find(own, statement);
        var said = info.Bind(statement);
        var places = ByTier.Where(pair => statement.Has(pair.Spec)).Select(pair => new PlaceDefinition(said, pair.Kind, movement ?? "", null)).ToList();
        foreach (var (spec, kind) in ByAnother)
        {
            foreach (var line in statement.All(spec))
            {
                var other = context.Movements.Find(line.Content, statement);
                if (line.Content.Key == own.Key)
                {
                    context.Error("SR3008", "A movement is placed by itself", statement, line.Content.Span, "the same movement", new Suggestion("name another movement"));
                }
                else if (other is not null)
                {
                    places.Add(new PlaceDefinition(said, kind, movement ?? "", other));
                }
            }
        }

        return movement is null ? [] : places;
    }

    private void ReportTwice(List<PlaceDefinition> places)
    {
        var second = places[1].Info.Location;
        context.Findings.Add(new Diagnostic("SR5019", Severity.Error, $"\"{places[0].Movement}\" is placed by judgement twice", new Label(second, "second time"))
        {
            Others = [new Label(places[0].Info.Location, "first time")],
            Suggestions = [new Suggestion("keep one of the two")],
        });
    }
}
