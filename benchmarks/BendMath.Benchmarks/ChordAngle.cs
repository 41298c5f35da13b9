namespace BendMath.Benchmarks;

/// <summary>
/// A rolled angle cut into chords of equal height, as a spreadsheet would: midpoint sums for area and moments over chords along the axial
/// leg, running sums for the equal-area axis, and the same over chords along the radial leg for the plastic modulus of that direction.
/// </summary>
internal sealed class ChordAngle(double radialLeg, double axialLeg, double thickness, double root, double toe, int count)
{
    private readonly double[] _chords = new double[count];

    public double Sum()
    {
        double area = 0, y = 0, z = 0, yy = 0, zz = 0, yz = 0;
        double height = radialLeg / count;
        for (int i = 0; i < count; i++)
        {
            double level = (i + 0.5) * height;
            double chord = Chord(level, radialLeg, axialLeg);
            _chords[i] = chord;
            double strip = chord * height;
            area += strip;
            y += strip * level;
            z += strip * chord / 2;
            yy += strip * level * level;
            zz += strip * chord * chord / 3;
            yz += strip * level * chord / 2;
        }

        (double levelY, double plasticY) = Plastic(height, area);
        height = axialLeg / count;
        for (int i = 0; i < count; i++)
        {
            _chords[i] = Chord((i + 0.5) * height, axialLeg, radialLeg);
        }

        (double levelZ, double plasticZ) = Plastic(height, area);
        double perimeter = 2 * (radialLeg + axialLeg) - (2 - Math.PI / 2) * (2 * toe + root);
        double cy = y / area;
        double cz = z / area;
        double b = yy - area * cy * cy;
        double r = zz - area * cz * cz;
        double product = yz - area * cy * cz;
        double mean = (b + r) / 2;
        double radius = Math.Sqrt((b - r) * (b - r) / 4 + product * product);
        double angle = -0.5 * Math.Atan2(2 * product, b - r);
        return area + radialLeg + axialLeg + cy + cz + b + r + product + mean + radius + mean - radius + angle
            + b / cy + b / (radialLeg - cy) + r / cz + r / (axialLeg - cz)
            + levelY + plasticY + levelZ + plasticZ + plasticY * (radialLeg - cy) / b
            + Math.Sqrt(b / area) + Math.Sqrt(r / area) + Math.Sqrt((mean + radius) / area) + Math.Sqrt((mean - radius) / area) + perimeter;
    }

    private (double Level, double Modulus) Plastic(double height, double area)
    {
        double below = 0;
        int half = 0;
        while (below + _chords[half] * height < area / 2)
        {
            below += _chords[half++] * height;
        }

        double level = half * height + (area / 2 - below) / _chords[half];
        double modulus = 0;
        for (int i = 0; i < count; i++)
        {
            modulus += _chords[i] * height * Math.Abs((i + 0.5) * height - level);
        }

        return (level, modulus);
    }

    /// <summary>Length of the chord at a height above the outer face of one leg.</summary>
    private double Chord(double height, double standing, double lying)
    {
        if (height < thickness - toe)
        {
            return lying;
        }

        if (height < thickness)
        {
            double u = height - thickness + toe;
            return lying - toe + Math.Sqrt(toe * toe - u * u);
        }

        if (height < thickness + root)
        {
            double u = thickness + root - height;
            return thickness + root - Math.Sqrt(root * root - u * u);
        }

        if (height < standing - toe)
        {
            return thickness;
        }

        double v = height - standing + toe;
        return thickness - toe + Math.Sqrt(toe * toe - v * v);
    }
}
