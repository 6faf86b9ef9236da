using System.Globalization;
using Scriban;
using Scriban.Runtime;
using Scriban.Syntax;
using WetCheck.Model;

namespace WetCheck.Reporting;

/// <summary>Fills a template of the rule book. A book may come from anywhere, so a template can read its model and nothing else.</summary>
internal static class Sheet
{
    /// <summary>Scriban cuts what is longer without a word; no list comes near it.</summary>
    private const int Longest = 16_000_000;

    private static readonly string[] Functions = ["array", "string", "math"];

    /// <param name="name">As in <c>rules/lists</c>, without its ending: <c>punch.html</c>.</param>
    /// <exception cref="TemplateException">There is none, or it can't be filled. The message names its place.</exception>
    public static string Fill(RuleBook book, string name, ScriptObject model)
    {
        if (!book.Lists.TryGetValue(name, out var text))
        {
            throw new TemplateException($"rules/lists has no {name}.scriban.");
        }

        var template = Template.Parse(text, $"rules/lists/{name}.scriban");
        if (template.HasErrors)
        {
            throw new TemplateException(string.Join('\n', template.Messages.Select(message => message.ToString())));
        }

        try
        {
            var filled = template.Render(Context(model));
            return filled.Length < Longest ? filled
                : throw new TemplateException($"rules/lists/{name}.scriban writes more than {Longest} characters.");
        }
        catch (ScriptRuntimeException e)
        {
            throw new TemplateException(e.Message);
        }
    }

    private static TemplateContext Context(ScriptObject model)
    {
        var builtins = new ScriptObject();
        var all = TemplateContext.GetDefaultBuiltinObject();
        foreach (var function in Functions)
        {
            builtins.SetValue(function, all[function], readOnly: true);
        }

        var context = new TemplateContext(builtins)
        {
            StrictVariables = true,
            EnableRelaxedMemberAccess = false,
            EnableRelaxedTargetAccess = false,
            EnableRelaxedFunctionAccess = false,
            EnableRelaxedIndexerAccess = false,
            EnableNullIndexer = false,
            LoopLimit = 50_000,
            LimitToString = Longest,
            RecursiveLimit = 20,
            ObjectRecursionLimit = 20,
            RegexTimeOut = TimeSpan.FromMilliseconds(200),
            TemplateLoader = null,
        };
        context.PushCulture(CultureInfo.InvariantCulture);
        context.PushGlobal(model);
        return context;
    }
}

/// <summary>A template of the rule book can't be filled. The message says where.</summary>
public sealed class TemplateException(string message) : Exception(message);
