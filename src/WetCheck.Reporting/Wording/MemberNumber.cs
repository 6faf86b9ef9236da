using WetCheck.Model;

namespace WetCheck.Reporting;

/// <summary>The number of one member within its entry, as lists for programs print it.</summary>
public static class MemberNumber
{
    /// <returns><c>221-A1</c>, <c>322-1</c>; of the unnamed rest of a list <c>221-other</c>.</returns>
    public static string Printed(Entry entry, Check check) => Naming.Member(entry, check);
}
