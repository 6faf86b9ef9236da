using System.Linq.Expressions;
using NRules.Extensibility;

namespace WetCheck.Engine;

/// <summary>Runs the network's expressions without emitting code: quicker to start, and the only way in a native build.</summary>
internal sealed class InterpretedExpressions : IExpressionCompiler
{
    public TDelegate Compile<TDelegate>(Expression<TDelegate> expression)
        where TDelegate : Delegate => expression.Compile(preferInterpretation: true);
}
