using System.Text;
using WetCheck.Model;

namespace WetCheck.Press;

/// <summary>The files of the rule book as text, with their paths within it, in ordinal order.</summary>
internal static class RuleFolder
{
    private static readonly UTF8Encoding s_strict = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    public static (IReadOnlyList<(string Path, string Text)> Files, IReadOnlyList<Problem> Problems) Read(string folder)
    {
        var files = new List<(string Path, string Text)>();
        var problems = new List<Problem>();
        foreach (var file in Directory.EnumerateFiles(folder, "*", SearchOption.AllDirectories)
            .Select(file => System.IO.Path.GetRelativePath(folder, file).Replace('\\', '/'))
            .Where(name => !name.Split('/').Any(part => part.StartsWith('.')))
            .Order(StringComparer.Ordinal))
        {
            try
            {
                files.Add((file, File.ReadAllText(System.IO.Path.Combine(folder, file), s_strict)));
            }
            catch (DecoderFallbackException)
            {
                problems.Add(new Problem("not-utf8", new At(file, 1, 1),
                    "This file is not text in UTF-8. Save it as UTF-8.", "", Effect.Stops));
            }
        }

        return (files, problems);
    }
}
