namespace WetCheck.Tests.Shows;

/// <summary>
/// One job in millimetres under three codes: three lists. Falls by NCC 2022 10.2.12 (1:80 to 1:50), BS 5385 (1:80 to
/// 1:35), IRC P2709.1 (1/4 to 1/2 in per ft, 1:48 to 1:24).
/// </summary>
public sealed class MetricCodes
{
    private const string Job = """
        method: bonded membrane with curb
        units: millimetres
        stage: last
        plumbing code: PLUMBING
        building code: BUILDING
        floor: { judged: square to the wall, figure: inches }
        floor falls:
          left: 15 over 1200
          back: 15 over 600
          right: 33 over 1200
          entry: 25 over 450
        membrane: { lap: 45, standard: AS/NZS 4858 }
        curb: { core: brick or block }
        soft joints: { width: 4 }
        laying: { joint: 1.7 }
        delivery: { made of: porcelain, edge: 300, size spread: 0.2, absorption: 8 % }
        walls: { waterproof to: 1800 above floor substrate }
        """;

    [Theory]
    [InlineData("NCC 2022", "NCC 2022", "134-A 134-C 134-D")]
    [InlineData("G3", "BS 5385 2018", "134-A 510 563")]
    [InlineData("IRC 2021", "IRC 2021", "133-B 134-A 401 402")]
    public void The_same_job_gives_each_code_its_own_list(string plumbing, string building, string toFix)
    {
        var walk = TheBook.Walk(Job.Replace("PLUMBING", plumbing, StringComparison.Ordinal)
            .Replace("BUILDING", building, StringComparison.Ordinal));
        walk.ToFix.Select(entry => entry.Number).Order(StringComparer.Ordinal).Should().Equal(toFix.Split(' '));
    }
}
