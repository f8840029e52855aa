using System.Collections.Immutable;
using ScoreRules.Language.Diagnostics;
using ScoreRules.Language.Syntax.Grammar;
using ScoreRules.Language.Syntax.Nodes;
using ScoreRules.Language.Syntax.Tree;

namespace ScoreRules.Language.Overlays;

/// <summary>
/// Puts the houses of a chain together, the base of all first: what a house changes or drops, then what it adds. The order of
/// files and of statements in a house does not matter.
/// </summary>
internal sealed class OverlayMerger
{
    private readonly DiagnosticBag findings;
    private readonly OverlayFindings report;
    private readonly DateOnly? date;
    private readonly ImmutableArray<string> houses;
    private readonly Ledger ledger = new();
    private readonly StatementList merged = new();

    private OverlayMerger(ImmutableArray<string> houses, DateOnly? date, DiagnosticBag findings)
    {
        (this.houses, this.date, this.findings) = (houses, date, findings);
        report = new OverlayFindings(findings);
    }

    /// <summary>Merges.</summary>
    /// <param name="statements">The statements of all files; the layer of a source says which house it belongs to.</param>
    /// <param name="nearby">Names of the houses in the folders beside.</param>
    /// <param name="date">The day of the ranking; null when none is known.</param>
    /// <param name="findings">Where findings go.</param>
    public static MergedHouse Merge(IReadOnlyList<StatementSyntax> statements, ImmutableArray<string> nearby, DateOnly? date, DiagnosticBag findings)
    {
        var layers = statements.GroupBy(statement => statement.Source.Floor).OrderBy(layer => layer.Key).ToDictionary(layer => layer.Key, layer => layer.ToList());
        var rulesets = layers.Values.Select(Ruleset).OfType<StatementSyntax>().ToList();
        if (!new BaseCheck(nearby, findings).Holds(rulesets))
        {
            return new MergedHouse([rulesets[^1]], new Ledger(), IsComplete: false);
        }

        var top = layers.Count == 0 ? 0 : layers.Keys.Max();
        var names = Enumerable.Range(0, top + 1).Select(floor => floor == 0 ? "what all houses share" : layers.TryGetValue(floor, out var layer) && Ruleset(layer) is { } ruleset ? ruleset.Head<NameSyntax>().Text : "this house");
        var merger = new OverlayMerger([.. names], date, findings);
        merger.ledger.Bases = [.. rulesets.SkipLast(1).Select(house => new BaseHouse(house.Head<NameSyntax>().Text, house.Find(HouseGrammar.Version)?.Content.Text ?? ""))];
        foreach (var layer in layers.Values)
        {
            merger.Add(layer);
        }

        return new MergedHouse([.. merger.merged.Settle().OrderBy(statement => Math.Max(1, statement.Source.Floor)).ThenBy(statement => statement.Source.Path, StringComparer.Ordinal)], merger.ledger, IsComplete: true);
    }

    private static StatementSyntax? Ruleset(IEnumerable<StatementSyntax> layer) =>
        layer.FirstOrDefault(statement => statement.Spec == HouseGrammar.Ruleset && statement.First is not null && !statement.Source.IsShared);

    private void Add(List<StatementSyntax> house)
    {
        var own = house.FindAll(statement => OverlayGrammar.KindOf(statement.Spec) is null);
        var safety = new Reliance(merged.Settle());
        var gate = new SafetyGate(safety, report);
        var sound = new Conflicts(report).Without(Resolve(house, own)).FindAll(gate.Allows);
        foreach (var change in sound.Where(change => !change.Kind.IsDrop).OrderBy(change => change.Kind.Of != VocabularyGrammar.Tiers))
        {
            Change(change, gate);
        }

        foreach (var drop in sound.Where(change => change.Kind.IsDrop))
        {
            Drop(drop);
        }

        Declare(own.FindAll(gate.AllowsOwn));
    }

    private List<Resolved> Resolve(List<StatementSyntax> house, List<StatementSyntax> own)
    {
        var among = merged.ToList();
        var resolved = new List<Resolved>();
        foreach (var amending in house.Where(statement => OverlayGrammar.KindOf(statement.Spec) is not null))
        {
            if (amending.First is null)
            {
                ledger.Doubt(amending.All(OverlayGrammar.Tier));
                continue;
            }

            var kind = OverlayGrammar.KindOf(amending.Spec)!;
            if (kind.Of == RuleGrammar.Caution)
            {
                report.CautionStays(kind, amending, among);
            }
            else if (Things.Find(kind, amending, among) is not { Count: > 0 } things)
            {
                report.Missing(kind, amending, Things.Names(kind, among), Things.Find(kind, amending, own).FirstOrDefault());
                ledger.Doubt(amending.All(OverlayGrammar.Tier));
            }
            else if (ChangeLines.DatesTheThing(amending) || Validity.Covers(amending, date))
            {
                resolved.Add(new Resolved(amending, kind, [.. things]));
            }
            else
            {
                ledger.NotInForce.Add(amending);
            }
        }

        return resolved;
    }

    private void Change(Resolved change, SafetyGate gate)
    {
        var thing = merged.Now(change.Things[0]);
        if (!change.Amending.IsWhole)
        {
            // A line of it could not be read, which has been reported; without it the others may not fit what stands there.
            ledger.Doubt(change.Amending.All(OverlayGrammar.Tier));
        }
        else if (change.Things.Length > 1)
        {
            report.Several(change);
        }
        else if (new ChangeLines(report, ledger).Of(change.Amending, thing) is { } parts)
        {
            var after = StatementMerger.Merge(thing, change.Amending, parts, houses, findings);
            if (gate.AllowsResult(change, thing, after.Statement, merged.Tiers))
            {
                Enter(change, thing, after);
            }
        }
    }

    private void Enter(Resolved change, StatementSyntax thing, MergedStatement after)
    {
        merged.Replace(change.Things[0], after.Statement);
        ledger.Replace(thing, after.Statement);
        ledger.Enter(Amendment(change, AmendmentAction.Changed, after.Lines), after.Statement);
        foreach (var rename in change.Amending.All(OverlayGrammar.Tier).Where(line => line.Content.NewName is not null))
        {
            var dropped = new DroppedName(HouseOf(change.Amending), change.Amending.At(rename.Span), rename.Content.NewName!.Text);
            ledger.Dropped.Add("tiers", rename.Content.Name.Text, dropped);
            merged.ReplaceAll(statement => TierRename.Apply(statement, rename.Content.Name, rename.Content.NewName!, change.Amending), ledger);
        }
    }

    private void Drop(Resolved drop)
    {
        foreach (var thing in drop.Things)
        {
            merged.Remove(thing);
        }

        ledger.Enter(Amendment(drop, AmendmentAction.Dropped, []), after: null);
        if (Things.NameIn(drop.Amending) is { } name)
        {
            ledger.Dropped.Add(drop.Kind.Words, name.Text, new DroppedName(HouseOf(drop.Amending), drop.Amending.HeadLocation, NewName: null));
        }
    }

    private Amendment Amendment(Resolved change, AmendmentAction action, ImmutableArray<AmendedLine> lines)
    {
        var because = change.Amending.All(Uniform.Because).Select(line => line.Content.Text).ToList();
        return new Amendment(action, change.Kind.Words, Things.Title(change.Kind, change.Amending), HouseOf(change.Amending), change.Amending.HeadLocation, houses[change.Things[0].Source.Floor], change.Things[0].HeadLocation)
        {
            Lines = lines,
            Because = because.Count == 0 ? null : string.Join(" ", because),
        };
    }

    // What the houses below declare is changed, not declared again; a call may be given one more way in.
    private void Declare(List<StatementSyntax> own)
    {
        var before = merged.Settle();
        var declared = before.Count == 0 ? [] : Declaration.Index(before);
        foreach (var statement in own)
        {
            if (statement.Spec == HouseGrammar.Ruleset && before.Find(other => other.Spec == HouseGrammar.Ruleset && other.First is not null) is { } header && statement.First is not null)
            {
                merged.Remove(header);
                merged.Add(HeaderMerger.Merge(header, statement));
            }
            else if (Declaration.Of(statement) is { } key && declared.TryGetValue(key, out var earlier))
            {
                // One that could not be read in full has been reported, and may be meant as a change.
                if (statement.IsWhole && statement.First is not null)
                {
                    report.Redeclared(statement, earlier, houses[earlier.Source.Floor]);
                }
            }
            else
            {
                merged.Add(statement);
            }
        }
    }

    private string HouseOf(StatementSyntax statement) => houses[statement.Source.Floor];
}
