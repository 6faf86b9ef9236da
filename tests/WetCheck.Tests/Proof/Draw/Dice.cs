using WetCheck.Model;

namespace WetCheck.Tests.Proof;

/// <summary>Chance with a seed: the same draws on every machine.</summary>
internal sealed class Dice(int seed)
{
    private readonly Random _random = new(seed);

    public bool Chance(double share) => _random.NextDouble() < share;

    public double Share() => _random.NextDouble();

    /// <summary>A whole number, both ends included.</summary>
    public int Next(int least, int most) => _random.Next(least, most + 1);

    public T Pick<T>(IReadOnlyList<T> of) => of[_random.Next(of.Count)];

    /// <summary>A number between two ends, on a grid of so many parts of one.</summary>
    public Rational Between(Rational least, Rational most, int parts) =>
        least + new Rational(Next(0, (int)((most - least) * parts).Floor()), parts);

    public IReadOnlyList<T> Shuffled<T>(IEnumerable<T> of)
    {
        var all = of.ToArray();
        _random.Shuffle(all);
        return all;
    }
}
