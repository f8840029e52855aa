using ScoreRules.Language.Text;
using Superpower.Model;

namespace ScoreRules.Language.Syntax.Tree;

/// <summary>One kind of line: the words it starts with and the grammar of the rest. Part of the statement table.</summary>
internal abstract class ClauseSpec(string starter, ScanMode mode)
{
    /// <summary>The words that the line starts with; empty for lines that start with a name.</summary>
    public string Starter { get; } = starter;

    /// <summary><see cref="Starter"/> as words.</summary>
    public IReadOnlyList<string> StarterWords { get; } = starter.Split(' ', StringSplitOptions.RemoveEmptyEntries);

    /// <summary>Where free text begins.</summary>
    public ScanMode Mode { get; } = mode;

    /// <summary>Whether this line goes on with the line above (<c>and</c>, <c>or when</c>, <c>unless</c>).</summary>
    public bool Continues { get; init; }

    /// <summary>Parses the rest of the line; null when it does not fit, in which case <see cref="FurthestFailure"/> knows why.</summary>
    public abstract ClauseSyntax? Parse(TokenList<TokenKind> rest, SourceSpan line);
}
