using Microsoft.CodeAnalysis;

namespace WetCheck.Keys;

/// <summary>Writes the class <c>Phrase</c> anew whenever the English words change: a key that is gone no longer compiles.</summary>
[Generator(LanguageNames.CSharp)]
public sealed class PhraseSource : IIncrementalGenerator
{
    public void Initialize(IncrementalGeneratorInitializationContext context)
    {
        var words = context.AdditionalTextsProvider
            .Where(file => Path.GetFileName(file.Path) == "en.yaml")
            .Select((file, stopped) => file.GetText(stopped)?.ToString() ?? "");
        context.RegisterSourceOutput(words, (output, text) => output.AddSource("Phrase.g.cs", PhraseClass.Written(WordKey.Read(text))));
    }
}
