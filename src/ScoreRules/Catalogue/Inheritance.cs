using System.Collections.Immutable;
using ScoreRules.Language.Binding;
using ScoreRules.Language.Diagnostics;
using ScoreRules.Language.Text;

namespace ScoreRules.Catalogue;

/// <summary>Fills in what movements take over from those they are like: a stated fact stands before an inherited one.</summary>
internal sealed class Inheritance(DeclarationTable table, LikeLinks links, int attributeCount, DiagnosticBag findings)
{
    private readonly ResolvedMovement?[] resolved = new ResolvedMovement?[table.Sorted.Length];

    /// <summary>All movements, in the order of the table.</summary>
    public ImmutableArray<ResolvedMovement> ResolveAll()
    {
        for (var i = 0; i < resolved.Length; i++)
        {
            ResolveChain(i);
        }

        return [.. resolved.Select(movement => movement!)];
    }

    // Not recursive: a chain of "like" may be as long as the catalogue.
    private void ResolveChain(int index)
    {
        var chain = new Stack<int>();
        for (var at = index; at >= 0 && resolved[at] is null; at = links.OriginalOf(at))
        {
            chain.Push(at);
        }

        while (chain.TryPop(out var next))
        {
            var original = links.OriginalOf(next);
            resolved[next] = Resolve(table.Sorted[next], original < 0 ? null : resolved[original], links.IsCut(next));
        }
    }

    private ResolvedMovement Resolve(MovementDeclaration declaration, ResolvedMovement? original, bool isCut)
    {
        var isStated = !declaration.Trains.IsEmpty || declaration.TrainsLocation is not null;
        var movement = new ResolvedMovement(
            declaration,
            original,
            isStated || original is null ? declaration.Trains : original.Trains,
            [],
            isStated || (original?.IsTrainsSaid ?? false),
            isCut || original is { HasCutLink: true } or { Declaration.IsWhole: false });
        return movement with { Facts = FactsOf(movement), TargetFacts = new TargetFacts(TargetFactsOf(movement)), Geometry = GeometryInheritance.Of(movement, findings) };
    }

    private ImmutableArray<CatalogueFact> FactsOf(ResolvedMovement movement)
    {
        var facts = movement.Original is { } original
            ? original.Facts.Select(fact => TakenOver(fact, original.Declaration.Name)).ToArray()
            : Enumerable.Repeat(CatalogueFact.NotSaid, attributeCount).ToArray();
        var stated = new Dictionary<int, StatedFact>();
        foreach (var fact in InOrder(movement.Declaration, ofTargets: false))
        {
            if (stated.TryAdd(fact.Attribute.Index, fact))
            {
                CheckBut(movement, fact, facts[fact.Attribute.Index]);
                facts[fact.Attribute.Index] = Said(fact);
            }
            else
            {
                findings.Add(FactFindings.StatedTwice(movement.Declaration, fact.Attribute.Name, fact.Location, stated[fact.Attribute.Index].Location));
            }
        }

        return [.. facts];
    }

    private ImmutableDictionary<(int Attribute, string Target), CatalogueFact> TargetFactsOf(ResolvedMovement movement)
    {
        var inherited = movement.Original?.TargetFacts.ByAttribute.ToImmutableDictionary(pair => pair.Key, pair => TakenOver(pair.Value, movement.Original.Declaration.Name))
            ?? TargetFacts.None.ByAttribute;
        var facts = inherited.ToBuilder();
        var stated = new Dictionary<(int, string), StatedFact>();
        foreach (var (fact, target) in InOrder(movement.Declaration, ofTargets: true).SelectMany(fact => fact.Targets.Select(target => (fact, target))))
        {
            var key = (fact.Attribute.Index, NameText.Key(target.Name));
            if (stated.TryAdd(key, fact))
            {
                CheckBut(movement, fact, inherited.GetValueOrDefault(key, CatalogueFact.NotSaid));
                facts[key] = Said(fact);
            }
            else
            {
                findings.Add(FactFindings.StatedTwice(movement.Declaration, fact.Attribute.Name, fact.Location, stated[key].Location));
            }
        }

        return facts.ToImmutable();
    }

    private static IEnumerable<StatedFact> InOrder(MovementDeclaration declaration, bool ofTargets) =>
        declaration.Facts.Where(fact => fact.Targets.IsEmpty != ofTargets).OrderBy(fact => fact.Location, Comparer<SourceLocation>.Create(SourceLocation.Compare));

    private static CatalogueFact Said(StatedFact fact) => new(fact.Value, fact.IsGuess ? FactOrigin.Guessed : FactOrigin.Stated, null, fact.Location);

    private void CheckBut(ResolvedMovement movement, StatedFact fact, CatalogueFact inherited)
    {
        var isInherited = inherited.Origin != FactOrigin.NotSaid;
        if (fact.IsBut && !isInherited && !movement.HasCutLink)
        {
            findings.Add(FactFindings.NothingToReplace(movement, fact));
        }
        else if (!fact.IsBut && isInherited)
        {
            findings.Add(FactFindings.ReplacesSilently(movement, fact, inherited));
        }
    }

    // A guess stays a guess however far it travels; who made it is kept beside it.
    private static CatalogueFact TakenOver(CatalogueFact fact, string from) => fact.Origin == FactOrigin.NotSaid
        ? fact
        : fact with { Origin = fact.Origin == FactOrigin.Guessed ? FactOrigin.Guessed : FactOrigin.Inherited, InheritedFrom = fact.InheritedFrom ?? from };
}
