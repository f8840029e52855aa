using System.Globalization;

namespace ScoreRules.Tests.Answers;

/// <summary>A movement of the small house.</summary>
internal sealed record QuaysideMovement(string Name, double Reach, double Hold, string Handle, string Kit, double Stress)
{
    /// <summary>Its rule text.</summary>
    public string Text(string target) => string.Create(CultureInfo.InvariantCulture, $"""
        movement {Name}
          trains {target}
          reach is {Reach}, hold is {Hold}, handle is {Handle}, elbow stress is {Stress}
          equipment has {Kit}


        """);

    /// <summary>The movement with one fact written differently.</summary>
    public QuaysideMovement With(string attribute, double number, string? word) => attribute switch
    {
        "reach" => this with { Reach = number },
        "hold" => this with { Hold = number },
        "handle" => this with { Handle = word! },
        _ => throw new ArgumentException(attribute, nameof(attribute)),
    };
}
