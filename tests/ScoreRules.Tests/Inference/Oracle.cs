using ScoreRules.Catalogue;
using ScoreRules.Language;
using ScoreRules.Language.Binding;

namespace ScoreRules.Tests.Inference;

/// <summary>
/// Judges one row in the plainest way, fact by fact, without columns, sets or an engine. It shares no code with the engine
/// that it checks. An answer is true, false, or null for "could not tell".
/// </summary>
internal sealed class Oracle(HouseCase house, PlacementRow row)
{
    public bool? Holds(Condition condition)
    {
        switch (condition)
        {
            case AllOf all:
                var parts = all.Parts.Select(Holds).ToList();
                return parts.Contains(false) ? false : parts.Contains(null) ? null : true;
            case AnyOf any:
                var ways = any.Parts.Select(Holds).ToList();
                return ways.Contains(true) ? true : ways.Contains(null) ? null : false;
            case Unless unless:
                return !Holds(unless.Part);
            case CalledTest called:
                return Called(called.Fact);
            case AttributeTest { Attribute.Kind: AttributeKind.OneOf or AttributeKind.SomeOf } test:
                return TestWords(test, Words(test.Attribute));
            case AttributeTest test:
                return TestNumber(test, Number(test.Attribute));
            default:
                return condition is Everything;
        }
    }

    public bool? Called(string fact)
    {
        var ways = house.Calls.Where(call => Same(call.Fact, fact)).Select(call => IsAbout(call) ? Holds(call.Condition) : false).ToList();
        return ways.Contains(true) ? true : ways.Contains(null) ? null : false;
    }

    public double? Number(AttributeDefinition attribute)
    {
        if (house.Recipes.Find(recipe => recipe.Result.Index == attribute.Index) is { } recipe)
        {
            return IsAbout(recipe) ? WorkOut(recipe) : null;
        }

        var value = attribute.Name == "likeness to the benchmark" ? FactValue.Of(house.Likeness[row.Index]) : row.Movement.Facts[attribute.Index].Value;
        return value.IsKnown && double.IsFinite(value.Number) ? value.Number : null;
    }

    public bool IsAbout(BoundStatement statement) => IsNamed(statement) && !statement.Info.ExceptFor.Any(Names);

    public bool IsExempt(BoundStatement statement, Condition condition) => Holds(condition) == true && IsNamed(statement) && statement.Info.ExceptFor.Any(Names);

    public bool IsOverridden(ConditionalStatement statement) =>
        statement is not CautionDefinition && Holds(statement.Condition) == true && IsAbout(statement)
        && house.Acting.Exists(other => other.GetType() == statement.GetType() && !ReferenceEquals(other, statement)
            && other.Info.Overrides.Any(name => statement.Info.Name is { } own && Same(name, own)) && HasEffect(other));

    public bool HasEffect(ConditionalStatement statement) => Holds(statement.Condition) == true && IsAbout(statement) && !IsOverridden(statement);

    private static bool Same(string left, string right) => string.Equals(left, right, StringComparison.OrdinalIgnoreCase);

    private static bool? TestWords(AttributeTest test, int[]? words) => test.Comparison switch
    {
        Comparison.Known => words is not null,
        Comparison.Unknown => words is null,
        _ when words is null => null,
        Comparison.Is or Comparison.OneOf or Comparison.HasAny => words.Intersect(test.Codes).Any(),
        Comparison.OtherThan or Comparison.NoneOf or Comparison.HasNone => !words.Intersect(test.Codes).Any(),
        _ => !test.Codes.Except(words).Any(),
    };

    private static bool? TestNumber(AttributeTest test, double? number)
    {
        if (test.Comparison is Comparison.Known or Comparison.Unknown)
        {
            return number is null == (test.Comparison == Comparison.Unknown);
        }

        if (number is null)
        {
            return null;
        }

        var (found, asked) = (Nanos(number.Value), Nanos(test.Number));
        return test.Comparison switch
        {
            Comparison.Is => found == asked,
            Comparison.OtherThan => found != asked,
            Comparison.AtLeast => found >= asked,
            Comparison.AtMost => found <= asked,
            Comparison.MoreThan => found > asked,
            Comparison.LessThan => found < asked,
            _ => found >= asked && found <= Nanos(test.High),
        };
    }

    // A whole number of billionths.
    private static decimal Nanos(double number) => decimal.Round((decimal)number * 1_000_000_000m, 0, MidpointRounding.AwayFromZero);

    private double? WorkOut(RecipeDefinition recipe)
    {
        double? number = null;
        foreach (var step in recipe.Steps)
        {
            var done = step.Condition is null ? true : Holds(step.Condition);
            var operand = step.Attribute is null ? step.Number : Number(step.Attribute);
            number = done switch
            {
                null => null,
                false => number,
                true when step.Operation == RecipeOperation.StartWith => operand,
                true when number is null || operand is null => null,
                true => Combine(step.Operation, number.Value, operand.Value),
            };
        }

        return number;
    }

    private static double? Combine(RecipeOperation operation, double number, double operand) => operation switch
    {
        RecipeOperation.Plus => number + operand,
        RecipeOperation.Minus => number - operand,
        RecipeOperation.Times => number * operand,
        RecipeOperation.DividedBy => Nanos(operand) == 0 ? null : number / operand,
        RecipeOperation.AtLeast => number < operand ? operand : number,
        _ => number > operand ? operand : number,
    };

    private int[]? Words(AttributeDefinition attribute)
    {
        if (attribute.IsAboutThePerson)
        {
            return house.Audience;
        }

        var value = row.Movement.Facts[attribute.Index].Value;
        return value.IsKnown ? [.. value.Codes] : null;
    }

    private bool IsNamed(BoundStatement statement) =>
        (statement.Info.OnlyFor.IsEmpty || statement.Info.OnlyFor.Any(Names))
        && (statement is not ExclusionDefinition { Movements.Length: > 0 } exclusion || exclusion.Movements.Any(name => Same(name, row.Movement.Name)));

    private bool Names(ScopeEntry entry)
    {
        if (entry.Movement is { } movement)
        {
            return Same(movement, row.Movement.Name);
        }

        var target = row.Target;
        while (target is not null && !Same(target.Name, entry.Target!.Name))
        {
            target = house.Targets.Find(other => target.Parent is { } parent && Same(other.Name, parent));
        }

        return target is not null;
    }
}
