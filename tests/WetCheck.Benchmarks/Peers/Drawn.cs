using WetCheck.Model;

namespace WetCheck.Benchmarks.Peers;

/// <summary>Checks and parts drawn from a seed. Everything is read: the general library has no word for unknown.</summary>
internal sealed class Drawn
{
    public static readonly string[] Stuffs = ["mortar", "board", "foam"];

    /// <summary>Readings and limits lie below this, in sixteenths of an inch.</summary>
    private const int Most = 200;

    public Drawn(int checks, int parts)
    {
        var random = new Random((checks * 31) + parts);
        Checks = [.. Enumerable.Range(1, checks).Select(number =>
        {
            var (a, b) = (random.Next(Most), random.Next(Most));
            return new Check(number, (Shape)random.Next(5), Math.Min(a, b), Math.Max(a, b));
        })];
        Pieces = [.. Enumerable.Range(1, parts).Select(number => new Piece(
            number, Inches(random.Next(Most)), Inches(random.Next(Most)), Inches(random.Next(Most)), Stuffs[random.Next(Stuffs.Length)]))];
    }

    public IReadOnlyList<Check> Checks { get; }

    public IReadOnlyList<Piece> Pieces { get; }

    public static Rational Inches(int sixteenths) => new(sixteenths, 16);
}
