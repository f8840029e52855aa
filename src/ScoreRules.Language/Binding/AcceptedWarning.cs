using ScoreRules.Language.Text;

namespace ScoreRules.Language.Binding;

/// <summary>A warning that an author accepts, with the reason: <c>accept SR4005 because ...</c>.</summary>
/// <param name="Code">Its code.</param>
/// <param name="Because">Why it is accepted.</param>
/// <param name="Location">The line that says so.</param>
/// <param name="FirstLine">First line of the statement it stands in.</param>
/// <param name="LastLine">Last line of that statement.</param>
public sealed record AcceptedWarning(string Code, string Because, SourceLocation Location, int FirstLine, int LastLine)
{
    /// <summary>Whether a place lies in the statement.</summary>
    public bool Covers(SourceLocation place) => place.Path == Location.Path && place.Line >= FirstLine && place.Line <= LastLine;
}
