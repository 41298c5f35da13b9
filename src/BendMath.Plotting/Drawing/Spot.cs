namespace BendMath.Plotting.Drawing;

/// <summary>A place or a step on the drawing, x to the right and y up, in whatever unit its owner counts.</summary>
internal readonly struct Spot(double x, double y)
{
    public double X { get; } = x;

    public double Y { get; } = y;

    public double Length => Math.Sqrt(X * X + Y * Y);

    public Spot Unit => this * (1 / Length);

    /// <summary>Turned a quarter counter-clockwise.</summary>
    public Spot Left => new(-Y, X);

    public static Spot operator +(Spot a, Spot b) => new(a.X + b.X, a.Y + b.Y);

    public static Spot operator -(Spot a, Spot b) => new(a.X - b.X, a.Y - b.Y);

    public static Spot operator *(Spot a, double factor) => new(a.X * factor, a.Y * factor);

    public double Dot(Spot other) => X * other.X + Y * other.Y;
}
