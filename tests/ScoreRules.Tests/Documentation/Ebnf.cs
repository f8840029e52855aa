using Superpower;
using Superpower.Parsers;

namespace ScoreRules.Tests.Documentation;

/// <summary>Rules in EBNF (ISO/IEC 14977), as far as <c>docs/language.md</c> uses it.</summary>
internal static class Ebnf
{
    private static readonly TextParser<string> Comment = Span.EqualTo("(*").Try().IgnoreThen(Span.Except("*)")).Then(said => Span.EqualTo("*)").Select(_ => said.ToStringValue()));
    private static readonly TextParser<Superpower.Model.Unit> Blank = Span.WhiteSpace.Value(Superpower.Model.Unit.Value).Or(Comment.Try().Value(Superpower.Model.Unit.Value)).IgnoreMany();
    private static readonly TextParser<string> Name = Token(Character.Letter.Then(first => Character.LetterOrDigit.Or(Character.EqualTo('-')).Many().Select(rest => first + new string(rest))));
    private static readonly TextParser<EbnfNode> Terminal = Token(Span.Except("\"").Between(Character.EqualTo('"'), Character.EqualTo('"')).Select(text => (EbnfNode)new EbnfTerminal(text.ToStringValue())));
    private static readonly TextParser<EbnfNode> Special = Token(Span.Except("?").Between(Character.EqualTo('?'), Character.EqualTo('?')).Select(text => (EbnfNode)new EbnfSpecial(text.ToStringValue().Trim())));

    private static readonly TextParser<EbnfNode> Primary =
        Terminal.Or(Special)
            .Or(Group('[', ']').Select(node => (EbnfNode)new EbnfOptional(node)))
            .Or(Group('{', '}').Select(node => (EbnfNode)new EbnfRepeated(node)))
            .Or(Group('(', ')'))
            .Or(Name.Select(name => (EbnfNode)new EbnfReference(name)));

    private static readonly TextParser<EbnfNode> Sequence = Primary.ManyDelimitedBy(Sign(',')).Select(parts => parts.Length == 1 ? parts[0] : new EbnfSequence(parts));
    private static readonly TextParser<EbnfNode> Choice = Sequence.ManyDelimitedBy(Sign('|')).Select(parts => parts.Length == 1 ? parts[0] : new EbnfChoice(parts));

    private static readonly TextParser<(string Name, EbnfNode Definition)> Rule =
        from name in Name
        from sign in Sign('=')
        from definition in Choice
        from end in Sign(';')
        select (name, definition);

    /// <summary>The rules of a text by name.</summary>
    public static IReadOnlyDictionary<string, EbnfNode> Read(string text) =>
        Blank.IgnoreThen(Rule.Many()).AtEnd().Parse(text).ToDictionary(rule => rule.Name, rule => rule.Definition, StringComparer.Ordinal);

    private static TextParser<EbnfNode> Group(char open, char close) =>
        Sign(open).IgnoreThen(Superpower.Parse.Ref(() => Choice)).Then(node => Sign(close).Select(_ => node));

    private static TextParser<char> Sign(char sign) => Token(sign == '(' ? Character.EqualTo('(').Then(found => Superpower.Parse.Not(Character.EqualTo('*')).Select(_ => found)).Try() : Character.EqualTo(sign));

    private static TextParser<T> Token<T>(TextParser<T> parser) => parser.Then(value => Blank.Select(_ => value));
}
