using System.Collections.Immutable;
using Humanizer;
using ScoreRules.Publishing.Json;

namespace ScoreRules.Publishing.Editions;

/// <summary>The sentences about editions and what changed between them.</summary>
public static class EditionWords
{
    /// <summary>An edition on one line: "Version 3.0.0, 4 May 2031".</summary>
    public static string Title(PublishedEdition edition) =>
        $"{(edition.Contents.Ruleset.Version.Length == 0 ? edition.Name : $"Version {edition.Contents.Ruleset.Version}")}, {Sentences.Day(edition.Date)}";

    /// <summary>Who made it, from what, and its number.</summary>
    public static string About(PublishedEdition edition)
    {
        var contents = edition.Contents;
        string?[] parts =
        [
            contents.Ruleset.BuildsOn.IsEmpty ? null : $"Builds on {string.Join(", which builds on ", contents.Ruleset.BuildsOn.Reverse().Select(below => $"{below.Name}, version {below.Version}"))}.",
            contents.WrittenBy is { } authors ? $"Written by {authors}." : "Its authors are not named.",
            contents.CheckedBy is { } reader ? $"Checked{(EditionContents.Day(contents.Ruleset.Checked) is { } day ? $" on {Sentences.Day(day)}" : "")} by {reader}." : "Nobody is named who checked it.",
            $"Edition {contents.Edition}, made by scorerules {contents.Tool}{(contents.DateIsTheHouses ? "" : "; the day was given by whoever published it")}.",
        ];
        return string.Join(' ', parts.OfType<string>());
    }

    /// <summary>What a reader can open of it, with a name for each.</summary>
    public static IEnumerable<(string File, string Name)> Forms(PublishedEdition edition) => new[]
    {
        (EditionFile.Page, "web page"),
        (EditionFile.Markdown, "rankings as text"),
        (EditionFile.Sheet, "rankings as a spreadsheet"),
        (EditionFile.Json, "rankings for programs"),
        (EditionFile.Expectations, "expectations"),
        (EditionFile.Contents, "contents and hashes"),
    }.Where(form => form.Item1 == EditionFile.Contents || edition.Has(form.Item1));

    /// <summary>How much changed, in one sentence.</summary>
    public static string Summary(ListedEdition listed)
    {
        if (listed.Before is not { } before)
        {
            return "The first edition here.";
        }

        var told = Told(listed).Count();
        var points = listed.Changes.Count(change => change.Kind == ChangeKind.OtherPoints);
        var since = $"Since {Sentences.Day(before.Date)} (edition {before.Contents.Edition}):";
        return (told, points) switch
        {
            (0, 0) => $"{since} every placement is the same.",
            (0, _) => $"{since} every movement is in the same tier; {Points(points)}.",
            (_, 0) => $"{since} {Placements(told)}.",
            _ => $"{since} {Placements(told)}; {Points(points)}.",
        };
    }

    /// <summary>The changes that are told one by one.</summary>
    public static IEnumerable<ListedChange> Told(ListedEdition listed) => listed.Changes.Where(change => change.Kind != ChangeKind.OtherPoints);

    /// <summary>One change: "seated leg curl: from Strong pick to Build on it, 72.0 to 81.2 points".</summary>
    public static string Change(ListedChange change) => change switch
    {
        { Kind: ChangeKind.New, After: { Tier: { } tier } after } => $"{after.Movement}: new, in {tier} with {NumberText.Points(after.Score)} points",
        { Kind: ChangeKind.New } => $"{change.Movement}: new, and left out",
        { Kind: ChangeKind.Gone, Before: { Tier: { } tier } } => $"{change.Movement}: no longer there; it was in {tier}",
        { Kind: ChangeKind.Gone } => $"{change.Movement}: no longer there; it was left out before",
        { Kind: ChangeKind.LeftOut, Before.Tier: { } tier } => $"{change.Movement}: left out now; it was in {tier}",
        { Kind: ChangeKind.TakenIn, After: { Tier: { } tier } after } => $"{change.Movement}: ranked now, in {tier} with {NumberText.Points(after.Score)} points; it was left out before",
        { Before: { } before, After: { } after } => $"{change.Movement}: from {before.Tier} to {after.Tier}, {NumberText.Points(before.Score)} to {NumberText.Points(after.Score)} points",
        _ => change.Movement,
    };

    /// <summary>What became of cautions, each in a sentence.</summary>
    public static IEnumerable<string> Cautions(ListedEdition listed) =>
        listed.CautionsAdded.Select(text => $"New caution: {text}").Concat(listed.CautionsGone.Select(text => $"No longer shown, because its words changed or its movements are gone: {text}"));

    /// <summary>The cautions for everybody that the newest edition of every house shows.</summary>
    public static ImmutableArray<string> ForAll(EditionList list) =>
        [.. list.Houses[0].Editions[0].Edition.CautionsForAll.Distinct(StringComparer.Ordinal).Where(text => list.Houses.All(house => house.Editions[0].Edition.CautionsForAll.Contains(text, StringComparer.Ordinal)))];

    /// <summary>The cautions for everybody that a house shows besides those.</summary>
    public static ImmutableArray<string> Own(EditionList list, ImmutableArray<ListedEdition> house) => [.. house[0].Edition.CautionsForAll.Distinct(StringComparer.Ordinal).Except(ForAll(list), StringComparer.Ordinal)];

    /// <summary>Whether an edition is what its rules say, in words.</summary>
    public static string Verified(VerifiedPart part, int files) => part.Faults.IsEmpty
        ? $"{part.Folder}: {"file".ToQuantity(files)}, every byte as published; what was made from the rules is what they say."
        : $"{part.Folder}: {"fault".ToQuantity(part.Faults.Length)}.{(part.Judged ? "" : " The rules were not judged again.")}\n{string.Concat(part.Faults.Select(fault => $"  - {fault}\n"))}".TrimEnd('\n');

    private static string Placements(int count) => $"{"placement".ToQuantity(count)} changed";

    private static string Points(int count) => $"{"movement".ToQuantity(count)} {(count == 1 ? "has" : "have")} other points in the same tier";
}
