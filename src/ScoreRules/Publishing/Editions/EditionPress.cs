using System.Collections.Immutable;
using ScoreRules.Certainty;
using ScoreRules.Guarding;
using ScoreRules.Houses;
using ScoreRules.Publishing.Json;

namespace ScoreRules.Publishing.Editions;

/// <summary>Makes editions: the rule text frozen, and everything that follows from it.</summary>
public static class EditionPress
{
    /// <summary>An edition of a judged house.</summary>
    /// <param name="judgement">The house as it was read and judged; it must pass its test.</param>
    /// <param name="request">What is wanted.</param>
    /// <exception cref="HouseException">The house has no name, ranks nothing, or no day is known.</exception>
    public static EditionDraft Make(Judgement judgement, EditionRequest request)
    {
        if (!TestRule.Passes(judgement))
        {
            throw new InvalidOperationException("A house that fails its test is not published.");
        }

        if (judgement.Ruleset.House is not { } house)
        {
            throw new HouseException("An edition needs the name of its house, and no file says it. Write \"ruleset NAME\" with \"version 1.0.0\" under it, at the top of one of the files.");
        }

        if (judgement.Rankings.IsEmpty)
        {
            throw new HouseException("This house ranks nothing, so there is nothing to publish: it needs \"tiers\", at least one \"target\" and at least one \"criterion\".");
        }

        var date = request.Date ?? judgement.Ruleset.Date ?? house.CheckedOn ?? throw new HouseException(
            $"An edition needs a day, and \"{house.Name}\" names none. Write when it was checked under its first line, for example \"checked 4 May 2031 by a second coach\", or give the day: --date 2031-05-04.");
        var name = request.Name is { } chosen ? EditionName.Chosen(chosen) : EditionName.Of(house, date);
        return new EditionDraft(name, Files(FrozenHouse.Of(judgement.Sources, judgement.Ruleset), request.Date, date, request.Page));
    }

    /// <summary>All files that follow from frozen rule text.</summary>
    /// <param name="frozen">The rule text.</param>
    /// <param name="named">The day that whoever published it named; null for the house's own.</param>
    /// <param name="date">The day of the edition.</param>
    /// <param name="page">Makes the web page; null without one.</param>
    internal static ImmutableArray<EditionFile> Files(HouseSources frozen, DateOnly? named, DateOnly date, Func<Judgement, HouseCertainty, string>? page)
    {
        var judgement = Judge.Run(frozen, profile: null, named);
        var certainty = HouseCertainty.Of(judgement);
        List<EditionFile> files =
        [
            .. FrozenHouse.Files(frozen),
            EditionFile.Of(EditionFile.Json, JudgementJson.Rank(judgement, judgement.Rankings, certainty)),
            EditionFile.Of(EditionFile.Sheet, new RankingCsv(judgement).Print(judgement.Rankings)),
            EditionFile.Of(EditionFile.Markdown, new RankingMarkdown(judgement).Print(judgement.Rankings)),
            EditionFile.Of(EditionFile.Expectations, JudgementJson.Test(judgement)),
        ];
        if (page is not null)
        {
            files.Add(EditionFile.Of(EditionFile.Page, page(judgement, certainty)));
        }

        ImmutableArray<EditionFilePart> parts = [.. files.OrderBy(file => file.Path, StringComparer.Ordinal).Select(file => new EditionFilePart(file.Path, file.Layer, file.Bytes.Length, file.Sha256))];
        return [.. files, EditionFile.Of(EditionFile.Contents, JudgementJson.Edition(judgement, date, named is null, parts))];
    }
}
