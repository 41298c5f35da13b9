using System.Globalization;
using System.Reflection;
using System.Runtime.CompilerServices;
using BendMath.Forming.Bumps;
using BendMath.Forming.ThreePoint;

namespace BendMath.Fuzz.Making;

/// <summary>
/// What the parts of one input have in common: the bar, the metal, the wanted ring, the dies and how the bender forms. Each is drawn when
/// first asked for.
/// </summary>
internal sealed class Scene(Maker maker)
{
    private static readonly IReadOnlyList<Type> MadeAlone =
        [.. Doors.KindsOf(typeof(FormingModel)).Where(model => model.GetConstructors().Length > 0)];

    private readonly Dictionary<string, Made?> _parts = new(StringComparer.Ordinal);

    private int? _digits;

    private double? _insideRadius;

    /// <summary>Laws whose integrals are closed: the others make a bender that pinches take seconds.</summary>
    public static IReadOnlyList<Type> Quick { get; } = [typeof(PerfectlyPlastic), typeof(LinearHardening)];

    /// <summary>The smallest length a door takes, in meters.</summary>
    public double Least => 1e-6;

    /// <summary>The largest length a door takes, in meters.</summary>
    public double Most => 1e6;

    /// <summary>The kinds of forming model to draw from.</summary>
    public IReadOnlyList<Type> Models { get; set; } = Doors.KindsOf(typeof(FormingModel));

    /// <summary>The kinds of stress–strain law to draw from.</summary>
    public IReadOnlyList<Type> Laws { get; set; } = Doors.KindsOf(typeof(StressStrainLaw));

    /// <summary>The shapes to draw from.</summary>
    public IReadOnlyList<Type> Shapes { get; set; } = Doors.KindsOf(typeof(BarStock));

    /// <summary>Makes the wanted ring so many times as wide as the widest the bar keeps; null for the usual.</summary>
    public double? Widened { get; set; }

    /// <summary>Whether a bender that pinches is left out, because the law of the bar makes it slow.</summary>
    public bool HoldsBack => !Quick.Contains(((BarMaterial)Material.Value!).Law.GetType());

    public bool HasRings => _parts.ContainsKey(nameof(Rings));

    public bool Pinches => Model.Value is IncrementalThreePointBending or BumpBending;

    public Made Section => Once(AnotherSection);

    public Made Material => Once(() => maker.MakeAnew(typeof(BarMaterial), null));

    public Made Analysis =>
        Once(
            () =>
                maker.CallWith(typeof(BendAnalysis).GetMethod(nameof(BendAnalysis.Of), [typeof(OrientedSection), typeof(BarMaterial)])!,
                    Section, Material));

    public Made Rack => Once(() => maker.MakeAnew(typeof(DieRack), null));

    public Made Setup => Once(() => maker.MakeAnew(typeof(ThreePointSetup), null));

    /// <summary>How the bender forms; what a correction corrects is a model that can be made without another.</summary>
    public Made Model => _parts.TryGetValue(nameof(Model), out Made? known) && known is null
        ? maker.MakeAnew(maker.Tape.Of(MadeAlone), null)
        : Once(() => maker.MakeAnew(maker.Tape.Of(Models), null));

    /// <summary>A full ring as often as an arc.</summary>
    public Made Arc => Once(() => maker.Through(
        maker.Tape.Chance(0.5) ? typeof(ArcExtent).GetMethod(nameof(ArcExtent.Of))!
            : typeof(ArcExtent).GetProperty(nameof(ArcExtent.FullRing))!, typeof(ArcExtent), null));

    public Made Rings =>
        Once(
            () =>
                Made.ListOf(typeof(MeasuredRing),
                    [.. Enumerable.Range(0, 1 + maker.Tape.Index(4)).Select(_ => maker.MakeAnew(typeof(MeasuredRing), null))]));

    public double Height => ((OrientedSection)Section.Value!).Depth.Meters;

    /// <summary>The inside radius of the wanted ring in meters: mostly one the bar keeps, sometimes any.</summary>
    public double InsideRadius => _insideRadius ??= Radius();

    /// <summary>Any shape, any way it can lie.</summary>
    public Made AnotherSection()
    {
        Type shape = maker.Tape.Of(Shapes);
        MemberInfo lies = maker.Tape.Of(Doors.OrientationsOf(shape));
        return maker.Call(lies, maker.MakeAnew(shape, null), null);
    }

    /// <summary>The outside dimension of a bar in meters: mostly one of the trade, sometimes any a door takes.</summary>
    public double Size() => maker.Tape.Chance(0.25) ? maker.Tape.Log(10 * Least, Most / 10) : maker.Tape.Log(2e-3, 0.4);

    /// <summary>A thickness between the smallest length and what is given, mostly not very thin.</summary>
    public double Thickness(double most) =>
        maker.Tape.Log(Math.Max(Least, most * (maker.Tape.Chance(0.1) ? 1e-9 : 0.02)), Math.Max(Least, most));

    /// <summary>A number with the digits of the scene, cut off after them.</summary>
    public double Cut(double number)
    {
        _digits ??= maker.Tape.Chance(0.5) ? 17 : 4;
        if (_digits > 15 || number == 0)
        {
            return number;
        }

        string text = number.ToString("E16", CultureInfo.InvariantCulture);
        int point = text.IndexOf('.', StringComparison.Ordinal);
        return double.Parse(text[..(point + _digits.Value)] + text[text.IndexOf('E', StringComparison.Ordinal)..],
            CultureInfo.InvariantCulture);
    }

    private double Radius()
    {
        double height = Height;
        StressStrainLaw law = ((BarMaterial)Material.Value!).Law;
        double strain = Math.Max(1e-9, law.YieldStress / law.ElasticModulus);
        double radius =
            Widened is { } times ? times * height / strain
                : maker.Tape.Chance(0.1) ? height * maker.Tape.Log(1e-2, 1e5) : height * maker.Tape.Log(0.7, Math.Max(3, 0.45 / strain));
        return Math.Clamp(radius, Least, Most / 10);
    }

    private Made Once(Func<Made> make, [CallerMemberName] string part = "")
    {
        if (_parts.TryGetValue(part, out Made? known))
        {
            return known ?? throw new OutOfReach($"{part} is needed to make itself");
        }

        _parts[part] = null;
        return _parts[part] = make();
    }
}
