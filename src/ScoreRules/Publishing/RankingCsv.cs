using System.Text;
using ScoreRules.Explanation;
using ScoreRules.Language.Binding;
using ScoreRules.Tiering;

namespace ScoreRules.Publishing;

/// <summary>Rankings as a spreadsheet: one row a movement, left-out ones too; each row carries its cautions and the edition, so that a row cut out keeps them.</summary>
public sealed class RankingCsv(Judgement judgement)
{
    private const string Heading = "target,rank,tied,movement,first,tier,tier before limits,points,gap,benchmark,verdict,set aside,left out,for every movement,edition,notice";
    private readonly Explainer explainer = judgement.Explainer ?? throw new InvalidOperationException("Nothing was ranked.");
    private readonly string edition = Edition.Of(judgement).Text + (judgement.Profile is { } profile ? $", profile {profile.Name}" : "") + (judgement.HasErrors ? ", made despite errors" : "");

    /// <summary>The rankings given, as the judgement's profile sees them if it has one.</summary>
    public string Print(IReadOnlyList<TargetRanking> whole)
    {
        var listed = ListedTarget.Of(judgement, whole);
        var everywhere = string.Join(' ', new CautionList(listed.Select(target => target.Ranking), explainer).At(CautionPlace.AboveTheRanking, CautionPlace.AtTheFoot).Select(caution => caution.Caution.Text));
        var sheet = new StringBuilder(Heading).Append("\r\n");
        foreach (var target in listed)
        {
            var aside = target.Personal?.SetAside.ToDictionary(row => row.Row.Index, PersonalText.Why) ?? [];
            foreach (var placement in target.Ranking.Placements.Concat(target.Personal?.Whole.Placements.Where(placement => aside.ContainsKey(placement.Row.Index)) ?? []))
            {
                Append(sheet, [.. Placed(target, placement, aside.GetValueOrDefault(placement.Row.Index)), everywhere, edition, Sentences.Education]);
            }

            foreach (var row in target.Ranking.LeftOut)
            {
                Append(sheet, [.. LeftOut(target, row), everywhere, edition, Sentences.Education]);
            }
        }

        return sheet.ToString();
    }

    private IEnumerable<string> Placed(ListedTarget target, Placement placement, string? aside)
    {
        var explained = explainer.Explain(target.Personal?.Whole ?? target.Ranking, placement.Row.Movement)!;
        return
        [
            target.Ranking.Target.Name, aside is null ? NumberText.Count(placement.Rank) : "", placement.IsTied ? "yes" : "no", placement.Row.Movement.Name, First(explained),
            placement.Tier.Name, placement.TierBeforeLimits.Name, NumberText.Points(placement.Score), double.IsNaN(placement.Gap) ? "" : NumberText.Signed(placement.Gap),
            target.Ranking.Benchmark?.Movement.Name ?? "", Sentences.Verdict(explained), aside ?? "", "",
        ];
    }

    private IEnumerable<string> LeftOut(ListedTarget target, LeftOutRow row)
    {
        var explained = explainer.Explain(target.Ranking, row.Row.Movement)!;
        return [target.Ranking.Target.Name, "", "no", row.Row.Movement.Name, First(explained), "", "", NumberText.Points(row.Score), "", target.Ranking.Benchmark?.Movement.Name ?? "", "", "", Sentences.Verdict(explained)];
    }

    private static string First(PlacementExplanation explained) =>
        string.Join(' ', explained.Cautions.Where(shown => shown.Caution.Place is CautionPlace.BesideTheName or CautionPlace.OnTheCard).Select(shown => shown.Caution.Text));

    private static void Append(StringBuilder sheet, IEnumerable<string> cells) => sheet.AppendJoin(',', cells.Select(Cell)).Append("\r\n");

    // Spreadsheets run text that starts like a formula; an apostrophe keeps it text. Signed numbers are left alone.
    private static string Cell(string text)
    {
        var isNumber = double.TryParse(text, System.Globalization.NumberStyles.Float, System.Globalization.CultureInfo.InvariantCulture, out _);
        var safe = !isNumber && text is ['=' or '+' or '-' or '@' or '\t' or '\r', ..] ? "'" + text : text;
        return safe.AsSpan().ContainsAny(",\"\r\n") ? $"\"{safe.Replace("\"", "\"\"", StringComparison.Ordinal)}\"" : safe;
    }
}
