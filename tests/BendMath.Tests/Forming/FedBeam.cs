namespace BendMath.Tests.Forming;

/// <summary>
/// A bender that pinches a bar between a round nose and two supports and feeds it a little between pinches, played through pinch by pinch
/// until nothing changes any more. Slopes are true: the bar is integrated as a curve from its contact on the nose; the supports push square
/// to the bar, without friction, and the moment at a point is the force of the support by its lever. The unknowns of a pinch are the moment
/// at the contact and the place of the contact on the nose, found such that both sides pass through their supports. Millimeters and
/// newtons; every point of the bar stands for a feed of its length. It shares nothing with the library.
/// </summary>
internal sealed class FedBeam(FedBeamBar bar, double feed, double halfSpan, double nose)
{
    private readonly double[] _endTangents = [0, 0];

    private double _moment;

    private double _contact;

    /// <summary>How far the bar of the last pinch lies inside the nose; not above zero where it touches at one point.</summary>
    public double Overlap { get; private set; }

    /// <summary>Place of the contact, along the nose toward the incoming side.</summary>
    public double ContactShift => nose * _contact;

    /// <summary>
    /// Feeds the bar through; the stroke grows to the full one over the first two half-spans, so that no first bite folds it.
    /// </summary>
    /// <param name="stroke">How far the supports advance past the tangent at the middle of the nose.</param>
    /// <param name="first">The point under the nose at first.</param>
    /// <param name="last">The point under the nose at last.</param>
    public void Run(double stroke, int first, int last)
    {
        for (int at = first; at <= last; at++)
        {
            Pinch(at, stroke * Math.Min(1, (at - first + 1) * feed / (2 * halfSpan)));
        }
    }

    /// <summary>Mean curvature of the bar let go, between two points.</summary>
    public double Finished(int from, int to) => Enumerable.Range(from, to - from + 1).Average(point => bar.CurvatureUnder(point, 0));

    private void Pinch(int at, double stroke)
    {
        if (_moment == 0)
        {
            _moment = 3 * bar.Respond(at, 0).Slope * stroke / (halfSpan * halfSpan);
        }

        (double right, double left) = Gaps(at, stroke, _moment, _contact);
        for (int i = 0; Math.Abs(right) + Math.Abs(left) > 1e-9 * halfSpan; i++)
        {
            Assert.True(i < 100, "The pinch found no equilibrium.");
            double dm = 1e-6 * _moment;
            const double Turn = 1e-7;
            (double rightM, double leftM) = Gaps(at, stroke, _moment + dm, _contact);
            (double rightC, double leftC) = Gaps(at, stroke, _moment, _contact + Turn);
            double rm = (rightM - right) / dm;
            double lm = (leftM - left) / dm;
            double rc = (rightC - right) / Turn;
            double lc = (leftC - left) / Turn;
            double determinant = (rm * lc) - (rc * lm);
            double stepM = ((rc * left) - (lc * right)) / determinant;
            double stepC = ((lm * right) - (rm * left)) / determinant;

            // A step that makes matters worse is halved.
            double before = Math.Abs(right) + Math.Abs(left);
            double moment = _moment;
            double contact = _contact;
            for (double share = 1; ; share /= 2)
            {
                Assert.True(share > 1e-6, "The pinch found no way to its equilibrium.");
                (_moment, _contact) = (moment + (share * stepM), contact + (share * stepC));
                (right, left) = Gaps(at, stroke, _moment, _contact);
                if (Math.Abs(right) + Math.Abs(left) < before)
                {
                    break;
                }
            }
        }

        Overlap = 0;
        Side(1, at, stroke, _moment, _contact, keep: true);
        Side(-1, at, stroke, _moment, _contact, keep: true);
    }

    private (double Incoming, double Outgoing) Gaps(int at, double stroke, double moment, double contact) =>
        (Side(1, at, stroke, moment, contact, keep: false), Side(-1, at, stroke, moment, contact, keep: false));

    /// <summary>
    /// How far the bar passes beyond the support of a side. The direction of the support's force is that of the bar there, found by
    /// repetition.
    /// </summary>
    private double Side(int side, int at, double stroke, double moment, double contact, bool keep)
    {
        int index = (side + 1) / 2;
        for (int i = 0; ; i++)
        {
            (double height, double tangent) = Shape(side, at, stroke, moment, contact, _endTangents[index], false);
            double change = Math.Abs(tangent - _endTangents[index]);
            _endTangents[index] = tangent;
            if (change < 1e-10)
            {
                if (keep)
                {
                    Shape(side, at, stroke, moment, contact, tangent, true);
                }

                return height - stroke;
            }

            Assert.True(i < 100, "The direction of the support's force was not found.");
        }
    }

    private (double Height, double Tangent) Shape(int side, int at, double stroke, double moment, double contact, double endTangent,
        bool keep)
    {
        double tangent = side * contact;
        double x = nose * Math.Sin(tangent);
        double y = nose * (1 - Math.Cos(tangent));
        double cos = Math.Cos(endTangent);
        double sin = Math.Sin(endTangent);
        double lever = ((halfSpan - x) * cos) + ((stroke - y) * sin);
        double place = at + (nose * contact / feed);
        int point = (int)Math.Round(place);
        double piece = feed * (0.5 + (side * (point - place)));
        while (true)
        {
            double half = piece / 2;
            double arm = ((halfSpan - x - (half * Math.Cos(tangent))) * cos) + ((stroke - y - (half * Math.Sin(tangent))) * sin);
            double here = moment * Math.Max(0, arm) / lever;
            double curvature = bar.CurvatureUnder(point, here);
            if (keep)
            {
                bar.Keep(point, here);
                double up = nose - y;
                Overlap = Math.Max(Overlap, nose - Math.Sqrt((x * x) + (up * up)));
            }

            double middle = tangent + (curvature * half);
            double across = piece * Math.Cos(middle);
            if (x + across >= halfSpan)
            {
                double share = (halfSpan - x) / across;
                return (y + (share * piece * Math.Sin(middle)), tangent + (share * piece * curvature));
            }

            x += across;
            y += piece * Math.Sin(middle);
            tangent += curvature * piece;
            point += side;
            piece = feed;
        }
    }
}
