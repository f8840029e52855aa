using System.Text.Json;
using System.Text.Json.Nodes;
using ScoreRules.Certainty;
using ScoreRules.Guarding;
using ScoreRules.Houses;
using ScoreRules.Publishing.Json;

namespace ScoreRules.Publishing.Editions;

/// <summary>Proves an edition: every byte is what its list of contents says, and everything made from the rules is what they say when judged again.</summary>
public static class EditionProof
{
    /// <summary>What is wrong with an edition.</summary>
    /// <param name="place">Its folder, for messages.</param>
    /// <param name="found">All files in it.</param>
    /// <param name="page">Makes the web page of a judgement and how sure it is.</param>
    public static VerifiedPart Check(string place, IReadOnlyDictionary<string, byte[]> found, Func<Judgement, HouseCertainty, string> page)
    {
        if (!found.TryGetValue(EditionFile.Contents, out var bytes))
        {
            return new VerifiedPart(place, null, false, [$"{EditionFile.Contents} is missing; without it nothing can be checked."]);
        }

        EditionDocument contents;
        try
        {
            contents = EditionContents.Read(place, bytes);
        }
        catch (HouseException problem)
        {
            return new VerifiedPart(place, null, false, [problem.Message]);
        }

        var touched = Touched(contents, found);
        var rules = touched.Any(fault => fault.IsRule);
        var isOther = contents.Tool != JudgementJson.ToolVersion;
        var faults = touched.Select(fault => fault.Text).ToList();
        if (isOther)
        {
            faults.Add($"It was made by scorerules {contents.Tool}, and this is {JudgementJson.ToolVersion}, which may calculate otherwise: only the hashes were checked. Verify it with that version, or publish it again with this one.");
        }
        else if (!rules)
        {
            faults.AddRange(Judged(contents, found, [.. touched.Select(fault => fault.Path)], page));
        }

        return new VerifiedPart(place, contents.Tool, !isOther && !rules, [.. faults]);
    }

    private static List<(string Path, bool IsRule, string Text)> Touched(EditionDocument contents, IReadOnlyDictionary<string, byte[]> found)
    {
        var faults = new List<(string Path, bool IsRule, string Text)>();
        foreach (var part in contents.Files)
        {
            if (!found.TryGetValue(part.Path, out var bytes))
            {
                faults.Add((part.Path, part.Layer is not null, $"{part.Path} is missing."));
            }
            else if (new EditionFile(part.Path, bytes).Sha256 != part.Sha256)
            {
                faults.Add((part.Path, part.Layer is not null, $"{part.Path} was changed after it was published: its SHA-256 is not the one in {EditionFile.Contents}."));
            }
        }

        var listed = contents.Files.Select(part => part.Path).Append(EditionFile.Contents).ToHashSet(StringComparer.Ordinal);
        faults.AddRange(found.Keys.Where(path => !listed.Contains(path)).Select(path => (path, path.StartsWith("rules/", StringComparison.Ordinal), $"{path} was added: {EditionFile.Contents} does not list it.")));
        return faults;
    }

    private static IEnumerable<string> Judged(EditionDocument contents, IReadOnlyDictionary<string, byte[]> found, HashSet<string> touched, Func<Judgement, HouseCertainty, string> page)
    {
        var date = EditionContents.Day(contents.Date)!.Value;
        var frozen = FrozenHouse.Read(contents.Files.Where(file => file.Layer is not null).Select(file => new EditionFile(file.Path, found[file.Path]) { Layer = file.Layer }), [.. contents.Ruleset.BuildsOn.Select(below => below.Name)]);
        var judgement = Judge.Run(frozen, profile: null, contents.DateIsTheHouses ? null : date);
        if (!TestRule.Passes(judgement) || judgement.Ruleset.House is null || judgement.Rankings.IsEmpty)
        {
            return ["Its rules do not pass their own test, so nothing follows from them: scorerules test shows why."];
        }

        var own = contents.DateIsTheHouses ? judgement.Ruleset.Date ?? judgement.Ruleset.House.CheckedOn ?? date : date;
        var made = EditionPress.Files(frozen, contents.DateIsTheHouses ? null : date, own, contents.Files.Any(file => file.Path == EditionFile.Page) ? page : null);
        var missing = made.Where(file => !found.ContainsKey(file.Path) && !touched.Contains(file.Path)).Select(file => $"{file.Path} is missing, and {EditionFile.Contents} does not list it either.");
        var wrong = made.Where(file => file.Path != EditionFile.Contents && !touched.Contains(file.Path) && found.TryGetValue(file.Path, out var bytes) && !bytes.AsSpan().SequenceEqual(file.Bytes))
            .Select(file => $"{file.Path} is not what the rules say, although its SHA-256 is the one in {EditionFile.Contents}.");
        List<string> faults = [.. missing, .. wrong];
        return [.. faults, .. Members(found[EditionFile.Contents], made[^1].Bytes, faults.Count > 0 || touched.Count > 0)];
    }

    // The list of contents is made again as well; a member that differs is named, files apart, which were named one by one.
    private static IEnumerable<string> Members(byte[] found, byte[] made, bool filesAreNamed)
    {
        if (found.AsSpan().SequenceEqual(made))
        {
            return [];
        }

        var (own, right) = (Object(found), Object(made));
        var names = right.Select(member => member.Key).Union(own.Select(member => member.Key), StringComparer.Ordinal).Where(name => !JsonNode.DeepEquals(own[name], right[name])).Where(name => name != "files").ToList();
        return names.Count > 0 ? [$"{EditionFile.Contents} was changed: {FactText.Join(names)} {(names.Count == 1 ? "is" : "are")} not what the rules say."]
            : JsonNode.DeepEquals(own["files"], right["files"]) ? [$"{EditionFile.Contents} was laid out anew: it says the same in other bytes."]
            : filesAreNamed ? []
            : [$"{EditionFile.Contents} lists its files in another way than they follow from the rules."];
    }

    // A member that stands there twice makes the whole list unlike any that was published.
    private static JsonObject Object(byte[] json)
    {
        try
        {
            return JsonNode.Parse(json, documentOptions: new JsonDocumentOptions { AllowDuplicateProperties = false }) as JsonObject ?? [];
        }
        catch (JsonException)
        {
            return [];
        }
    }
}
