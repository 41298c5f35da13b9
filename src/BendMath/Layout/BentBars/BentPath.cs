using BendMath.Sections.Outlines;

namespace BendMath.Layout.BentBars;

/// <summary>
/// The finished shape of a bar with several bends in its plane, part by part, along its left face. Meters and radians; x along the first
/// direction, y to its left.
/// </summary>
internal sealed class BentPath
{
    private readonly Stretch[] _stretches;

    public BentPath(IReadOnlyList<BarPart> parts, double height)
    {
        Height = height;
        _stretches = new Stretch[parts.Count];
        Pose pose = default;
        double along = 0;
        for (int i = 0; i < parts.Count; i++)
        {
            _stretches[i] = new(parts[i], along, pose, height);
            pose = _stretches[i].At(parts[i].Developed, 0);
            along += parts[i].Developed;
        }

        Length = along;
        End = pose;
    }

    public double Height { get; }

    public double Length { get; }

    public Pose End { get; }

    /// <param name="along">Unbent length from the start of the first part, between zero and the length.</param>
    /// <param name="fromLeft">Distance from the left face.</param>
    /// <param name="startMark">Where the first part starts on the blank.</param>
    public BarPlace Place(double along, double fromLeft, double startMark)
    {
        int i = _stretches.Length - 1;
        while (i > 0 && along < _stretches[i].Start)
        {
            i--;
        }

        return Place(i, along, fromLeft, startMark);
    }

    /// <param name="part">Index of the part.</param>
    /// <param name="onFiber">Finished length along the fiber from the start of the part.</param>
    /// <param name="fromLeft">Distance from the left face.</param>
    /// <param name="startMark">Where the first part starts on the blank.</param>
    public BarPlace PlaceOn(int part, double onFiber, double fromLeft, double startMark) =>
        Place(part, _stretches[part].Start + onFiber / _stretches[part].Stretched(fromLeft), fromLeft, startMark);

    public double FinishedLength(int part, double fromLeft) => _stretches[part].Part.Developed * _stretches[part].Stretched(fromLeft);

    /// <summary>Points along a fiber: the ends of every part, and within a bend at even steps of its turn.</summary>
    public List<OutlinePoint> Points(double fromLeft, double step)
    {
        List<OutlinePoint> points = [PointOf(_stretches[0].At(0, fromLeft))];
        foreach (Stretch stretch in _stretches)
        {
            int steps = stretch.Part.Arc is { } arc ? Math.Max(1, (int)Math.Ceiling(arc.Radians / step - 1e-9)) : 1;
            for (int k = 1; k <= steps; k++)
            {
                points.Add(PointOf(stretch.At(stretch.Part.Developed * k / steps, fromLeft)));
            }
        }

        return points;

        static OutlinePoint PointOf(Pose pose) => new(pose.X, pose.Y);
    }

    /// <summary>Exact: the ends of every part, and the points of its arcs whose tangents are upright or level.</summary>
    public (LengthRange X, LengthRange Y) Envelope()
    {
        double left = double.PositiveInfinity;
        double right = double.NegativeInfinity;
        double bottom = double.PositiveInfinity;
        double top = double.NegativeInfinity;
        foreach (Stretch stretch in _stretches)
        {
            Take(stretch, 0);
            Take(stretch, stretch.Part.Developed);
            if (stretch.Part.Arc is not { } arc)
            {
                continue;
            }

            double from = stretch.Entry.Heading;
            double sign = stretch.Sign;
            double quarter = Math.PI / 2;
            double first = sign > 0 ? Math.Ceiling(from / quarter) : Math.Floor(from / quarter);
            for (double at = first; sign * (at * quarter - from) <= arc.Radians; at += sign)
            {
                Take(stretch, sign * (at * quarter - from) / arc.Radians * stretch.Part.Developed);
            }
        }

        return (new(left, right), new(bottom, top));

        void Take(Stretch stretch, double along)
        {
            foreach (double face in new[] { 0, Height })
            {
                Pose pose = stretch.At(along, face);
                left = Math.Min(left, pose.X);
                right = Math.Max(right, pose.X);
                bottom = Math.Min(bottom, pose.Y);
                top = Math.Max(top, pose.Y);
            }
        }
    }

    private BarPlace Place(int part, double along, double fromLeft, double startMark)
    {
        Stretch stretch = _stretches[part];
        Pose pose = stretch.At(along - stretch.Start, fromLeft);
        return new(part + 1, startMark + along, fromLeft, pose.X, pose.Y, pose.Heading, stretch.Stretched(fromLeft) - 1);
    }

    /// <summary>A point and the direction of the bar there.</summary>
    public readonly record struct Pose(double X, double Y, double Heading);

    private readonly struct Stretch(BarPart part, double start, Pose entry, double height)
    {
        public BarPart Part { get; } = part;

        public double Start { get; } = start;

        public Pose Entry { get; } = entry;

        public double Sign { get; } = part.IsBend && !part.IsLeft ? -1 : 1;

        /// <summary>Finished length of a fiber per unbent length, R·κ_t.</summary>
        public double Stretched(double fromLeft) => Part.Ring is { } ring ? Radius(ring, fromLeft) * ring.TotalCurvature : 1;

        public Pose At(double along, double fromLeft)
        {
            double sin = Math.Sin(Entry.Heading);
            double cos = Math.Cos(Entry.Heading);
            if (Part.Ring is not { } ring)
            {
                return new(Entry.X + along * cos + fromLeft * sin, Entry.Y + along * sin - fromLeft * cos, Entry.Heading);
            }

            // The center lies to the left of the left face by its radius; to the right, by the outside radius, for a right bend.
            double toCenter = Sign * Radius(ring, 0);
            double heading = Entry.Heading + Sign * along * ring.TotalCurvature;
            double radius = Sign * Radius(ring, fromLeft);
            return new(Entry.X - toCenter * sin + radius * Math.Sin(heading), Entry.Y + toCenter * cos - radius * Math.Cos(heading),
                heading);
        }

        private double Radius(FinishedRing ring, double fromLeft) =>
            ring.RadiusAt(Sign > 0 ? fromLeft : height - fromLeft, Part.Section!.Profile.Moments.CentroidZ);
    }
}
