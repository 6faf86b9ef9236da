namespace WetCheck.Reporting;

/// <summary>A place on the paper: millimetres from its left and from its top.</summary>
internal readonly record struct Mm(double X, double Y)
{
    public double Length => Math.Sqrt((X * X) + (Y * Y));

    public Mm Unit => Length > 0 ? this * (1 / Length) : new Mm(0, 0);

    /// <summary>A quarter turn.</summary>
    public Mm Turned => new(-Y, X);

    public double Cross(Mm other) => (X * other.Y) - (Y * other.X);

    public static Mm operator +(Mm a, Mm b) => new(a.X + b.X, a.Y + b.Y);

    public static Mm operator -(Mm a, Mm b) => new(a.X - b.X, a.Y - b.Y);

    public static Mm operator *(Mm a, double by) => new(a.X * by, a.Y * by);
}

/// <summary>A box on the paper.</summary>
internal readonly record struct Box(double Left, double Top, double Right, double Bottom)
{
    public static Box Around(Mm middle, double width, double height) =>
        new(middle.X - (width / 2), middle.Y - (height / 2), middle.X + (width / 2), middle.Y + (height / 2));

    public Mm Middle => new((Left + Right) / 2, (Top + Bottom) / 2);

    public Box Wider(double by) => new(Left - by, Top - by, Right + by, Bottom + by);

    public bool Meets(Box other) => Left < other.Right && other.Left < Right && Top < other.Bottom && other.Top < Bottom;

    public bool Holds(Mm at) => at.X >= Left && at.X <= Right && at.Y >= Top && at.Y <= Bottom;

    /// <summary>Whether a line goes through it: an end inside, or a side crossed.</summary>
    public bool Meets(Mm from, Mm to)
    {
        if (Holds(from) || Holds(to))
        {
            return true;
        }

        Mm[] corners = [new(Left, Top), new(Right, Top), new(Right, Bottom), new(Left, Bottom)];
        var way = to - from;
        for (var at = 0; at < 4; at++)
        {
            var (a, side) = (corners[at], corners[(at + 1) % 4] - corners[at]);
            var turn = way.Cross(side);
            if (Math.Abs(turn) > 1e-12)
            {
                var (onWay, onSide) = ((a - from).Cross(side) / turn, (a - from).Cross(way) / turn);
                if (onWay is >= 0 and <= 1 && onSide is >= 0 and <= 1)
                {
                    return true;
                }
            }
        }

        return false;
    }
}
