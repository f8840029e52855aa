using System.Collections.Concurrent;
using System.Linq.Expressions;
using NRules.Extensibility;

namespace ScoreRules.Inference.Engine;

/// <summary>
/// Compiles each shape of expression once for the whole process. The rules of all houses differ in their constants only
/// (which statement fires, which called fact is waited for), so a hundred rules need a handful of compilations, and no
/// condition has to be interpreted.
/// </summary>
internal sealed class ShapeCompiler : IExpressionCompiler
{
    private static readonly ConcurrentDictionary<string, Delegate> Makers = new(StringComparer.Ordinal);

    /// <inheritdoc/>
    public TDelegate Compile<TDelegate>(Expression<TDelegate> expression)
        where TDelegate : Delegate
    {
        var shape = new ExpressionShape();
        var lifted = (Expression<TDelegate>)shape.Visit(expression)!;
        if (!shape.IsComplete)
        {
            return expression.Compile(preferInterpretation: true);
        }

        var maker = Makers.GetOrAdd($"{typeof(TDelegate)} {shape.Key}", _ => Expression.Lambda<Func<object[], TDelegate>>(lifted, shape.Constants).Compile());
        return ((Func<object[], TDelegate>)maker)([.. shape.Values]);
    }
}
