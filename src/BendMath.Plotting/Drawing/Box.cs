namespace BendMath.Plotting.Drawing;

/// <summary>An upright rectangle on the drawing, in pixels.</summary>
internal readonly struct Box(Spot center, double width, double height)
{
    public Spot Center { get; } = center;

    public double Left => Center.X - width / 2;

    public double Right => Center.X + width / 2;

    public double Bottom => Center.Y - height / 2;

    public double Top => Center.Y + height / 2;

    public bool Contains(Spot spot, double slack = 0) =>
        spot.X > Left - slack && spot.X < Right + slack && spot.Y > Bottom - slack && spot.Y < Top + slack;

    public bool Meets(Box other) => Left < other.Right && other.Left < Right && Bottom < other.Top && other.Bottom < Top;

    /// <summary>Five by three places spread over the rectangle.</summary>
    public IEnumerable<Spot> Spread()
    {
        for (int i = -2; i <= 2; i++)
        {
            for (int j = -1; j <= 1; j++)
            {
                yield return new(Center.X + i * width / 4, Center.Y + j * height / 2);
            }
        }
    }
}
