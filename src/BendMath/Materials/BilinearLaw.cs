using BendMath.Numerics;

namespace BendMath.Materials;

/// <summary>An elastic line to the yield strain and a straight line of slope E·(1 − rate) beyond: both public straight-line laws integrate through this.</summary>
internal readonly struct BilinearLaw(double yieldStrain, double rate) : IPlasticLaw
{
    public double ElasticLimit => yieldStrain;

    public GaussRule Rule => GaussRule.Two;

    public double PlasticStrain(double strain) => rate * Math.Max(0, strain - yieldStrain);

    public double PlasticRate(double strain) => strain >= yieldStrain ? rate : 0;

    public double NextBreak(double strain) => double.PositiveInfinity;
}
