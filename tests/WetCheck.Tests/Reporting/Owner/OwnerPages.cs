using System.Collections.Concurrent;
using WetCheck.Model;
using WetCheck.Reporting;

namespace WetCheck.Tests.Reporting.Owner;

/// <summary>The owner's page of a walk, for the tests.</summary>
internal static class OwnerPages
{
    public static OwnerPage Of(Walk walk, string language = "en") => OwnerPage.Of(walk, Listing.Of(walk, language, Walks.When));

    private static readonly ConcurrentDictionary<(Walk, string), string> s_kept = new();

    /// <summary>The page to keep alone, as text.</summary>
    public static string Keep(Walk walk, string language) =>
        s_kept.GetOrAdd((walk, language),
            _ => Sheet.Fill(walk.Book, "owner.md", new OwnerModel(Of(walk, language), Escape.Markdown).Build()));

    public static string Give(Walk walk, string language) =>
        PunchPage.Markdown(walk, language, Walks.When, Reader.Owner).Split("\n---\n")[1];
}
