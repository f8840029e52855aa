using System.Collections.Immutable;
using System.Security.Cryptography;
using System.Text;
using ScoreRules.Houses;
using ScoreRules.Language.Diagnostics;

namespace ScoreRules.Mending;

/// <summary>
/// Makes the safe edits of a house's findings, again and again until none is left: an edit may uncover another fault, and
/// edits that touch one another wait for the next round.
/// </summary>
public static class Mender
{
    private const int MostRounds = 10;

    /// <summary>Mends a house.</summary>
    /// <param name="sources">Its files.</param>
    /// <param name="mayChange">Which files may be changed, by path.</param>
    public static MendedHouse Mend(HouseSources sources, Predicate<string> mayChange)
    {
        var current = sources;
        var made = ImmutableArray.CreateBuilder<MadeEdit>();
        var findings = Judge.Run(current).Findings;
        for (var round = 0; round < MostRounds; round++)
        {
            var edits = SafeEdit.Of(findings).Where(safe => mayChange(safe.Edit.Location.Path)).ToList();
            if (edits.Count == 0)
            {
                break;
            }

            current = current with { Files = [.. current.Files.Select(file => Edited(file, edits, made))] };
            findings = Judge.Run(current).Findings;
        }

        var elsewhere = SafeEdit.Of(findings).Count(safe => !mayChange(safe.Edit.Location.Path));
        return new MendedHouse([.. current.Files.Except(sources.Files)], made.ToImmutable(), findings, elsewhere);
    }

    private static HouseFile Edited(HouseFile file, List<SafeEdit> edits, ImmutableArray<MadeEdit>.Builder made)
    {
        var here = TextEdits.Compatible(edits.Where(safe => safe.Edit.Location.Path == file.Path), safe => safe.Edit);
        if (here.IsEmpty)
        {
            return file;
        }

        made.AddRange(here.Select(safe => new MadeEdit(file.Path, safe.Edit.Location.Line, safe.Finding.Code, safe.Finding.Headline, safe.Suggestion.Advice)));
        var text = TextEdits.Apply(file.Text, here.Select(safe => safe.Edit));
        return file with { Text = text, Sha256 = Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(text))) };
    }
}
