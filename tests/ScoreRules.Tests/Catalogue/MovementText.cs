using System.Collections.Immutable;
using System.Globalization;
using ScoreRules.Language.Binding;
using ScoreRules.Language.Text;

namespace ScoreRules.Tests.Catalogue;

/// <summary>Makes movement declarations of a few lines that look like rule text, so that each fact has a true place.</summary>
internal static class MovementText
{
    public static ImmutableArray<MovementDeclaration> Parse(string text, string path = "movements.rules")
    {
        var source = new SourceText(path, text);
        var movements = new List<MovementDeclaration>();
        for (var line = 1; line <= source.LineCount; line++)
        {
            var span = source.LineSpan(line);
            var words = source.Slice(span);
            if (words.StartsWith("movement ", StringComparison.Ordinal))
            {
                movements.Add(new MovementDeclaration(new StatementInfo("movement", words["movement ".Length..], source.At(span))));
            }
            else if (words.Length > 0)
            {
                movements[^1] = AddLine(movements[^1], source, span, words.TrimStart());
            }
        }

        return [.. movements];
    }

    private static MovementDeclaration AddLine(MovementDeclaration movement, SourceText source, SourceSpan line, string words)
    {
        if (words.StartsWith("trains ", StringComparison.Ordinal))
        {
            var targets = words["trains ".Length..].Split(", ").Where(name => name != "?").Select(SmallHouse.Target);
            return movement with { Trains = [.. targets], TrainsLocation = source.At(line) };
        }

        if (words.StartsWith("like ", StringComparison.Ordinal))
        {
            var name = words["like ".Length..];
            return movement with { Like = name == "?" ? null : name, LikeLocation = source.At(new SourceSpan(line.End - name.Length, name.Length)) };
        }

        return words.StartsWith("also known as ", StringComparison.Ordinal)
            ? movement with { Synonyms = [.. words["also known as ".Length..].Split(", ")] }
            : movement with { Facts = movement.Facts.AddRange(Facts(source, line, words)) };
    }

    private static IEnumerable<StatedFact> Facts(SourceText source, SourceSpan line, string words)
    {
        var isBut = TakeOff(ref words, "but ");
        var isGuess = TakeOff(ref words, "at a guess ");
        var start = line.End - words.Length;
        foreach (var fact in words.Contains(" has ", StringComparison.Ordinal) ? [words] : words.TrimEnd(',').Split(", "))
        {
            var parts = fact.Split([" is ", " has "], StringSplitOptions.None);
            var attribute = SmallHouse.Attribute(parts[0]);
            yield return new StatedFact(attribute, Value(attribute, parts[1]), isBut, isGuess, source.At(new SourceSpan(start, fact.Length)));
            start += fact.Length + 2;
        }
    }

    private static FactValue Value(AttributeDefinition attribute, string value) => (value, attribute.IsWord) switch
    {
        ("unknown", _) => FactValue.Unknown,
        ("nothing", _) => FactValue.Of(ImmutableArray<int>.Empty),
        (_, true) => FactValue.Of([.. value.Split(", ").Select(attribute.CodeOf).Order()]),
        _ => FactValue.Of(double.Parse(value.Split(' ')[0], CultureInfo.InvariantCulture)),
    };

    private static bool TakeOff(ref string words, string prefix)
    {
        var found = words.StartsWith(prefix, StringComparison.Ordinal);
        words = found ? words[prefix.Length..] : words;
        return found;
    }
}
