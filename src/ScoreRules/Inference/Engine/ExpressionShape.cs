using System.Globalization;
using System.Linq.Expressions;
using System.Text;

namespace ScoreRules.Inference.Engine;

/// <summary>Takes the constants out of an expression and describes what is left, so that expressions of one shape can share their code.</summary>
internal sealed class ExpressionShape : ExpressionVisitor
{
    // What the description covers in full. Anything else is compiled by itself.
    private static readonly HashSet<ExpressionType> Described =
    [
        ExpressionType.Lambda, ExpressionType.Block, ExpressionType.Assign, ExpressionType.Call, ExpressionType.MemberAccess,
        ExpressionType.Parameter, ExpressionType.Convert, ExpressionType.Invoke, ExpressionType.Constant, ExpressionType.Equal, ExpressionType.NewArrayInit, ExpressionType.NewArrayInit,
    ];

    private readonly StringBuilder key = new();
    private readonly Dictionary<ParameterExpression, int> parameters = [];

    /// <summary>Where the rewritten expression finds its constants.</summary>
    public ParameterExpression Constants { get; } = Expression.Parameter(typeof(object[]), "constants");

    /// <summary>The constants taken out, in order.</summary>
    public List<object> Values { get; } = [];

    /// <summary>Whether the key says everything about the expression but its constants.</summary>
    public bool IsComplete { get; private set; } = true;

    /// <summary>Every node with its kind, type and member; the same for expressions that differ in constants and names only.</summary>
    public string Key => key.ToString();

    /// <inheritdoc/>
    public override Expression? Visit(Expression? node)
    {
        IsComplete &= node is null || Described.Contains(node.NodeType);
        key.Append(node is null ? "null" : node.NodeType.ToString()).Append(' ').Append(node?.Type).Append('(');
        var visited = base.Visit(node);
        key.Append(')');
        return visited;
    }

    /// <inheritdoc/>
    protected override Expression VisitConstant(ConstantExpression node)
    {
        if (node.Value is null)
        {
            return node;
        }

        Values.Add(node.Value);
        return Expression.Convert(Expression.ArrayIndex(Constants, Expression.Constant(Values.Count - 1)), node.Type);
    }

    /// <inheritdoc/>
    protected override Expression VisitParameter(ParameterExpression node)
    {
        parameters.TryAdd(node, parameters.Count);
        key.Append(CultureInfo.InvariantCulture, $"{parameters[node]}");
        return node;
    }

    /// <inheritdoc/>
    protected override Expression VisitBinary(BinaryExpression node)
    {
        key.Append(node.Method?.DeclaringType).Append('.').Append(node.Method);
        return base.VisitBinary(node);
    }

    /// <inheritdoc/>
    protected override Expression VisitUnary(UnaryExpression node)
    {
        key.Append(node.Method?.DeclaringType).Append('.').Append(node.Method);
        return base.VisitUnary(node);
    }

    /// <inheritdoc/>
    protected override Expression VisitMember(MemberExpression node)
    {
        key.Append(node.Member.DeclaringType).Append('.').Append(node.Member.Name);
        return base.VisitMember(node);
    }

    /// <inheritdoc/>
    protected override Expression VisitMethodCall(MethodCallExpression node)
    {
        key.Append(node.Method.DeclaringType).Append('.').Append(node.Method);
        return base.VisitMethodCall(node);
    }
}
