using BendMath.Json.Parts;
using UnitsNet;

namespace BendMath.Json.Words;

/// <summary>
/// What a file calls the numbers of a stress–strain law. The first number of a law that no other has tells which is meant; the reader, the
/// writer and the tests all take it from here.
/// </summary>
internal abstract class LawWords(Type law, string mark)
{
    /// <summary>Every law a file has words for; the last is meant where no mark of another is given.</summary>
    public static IReadOnlyList<LawWords> All { get; } =
    [
        new LawWords<PowerHardening>(
            "strength coefficient",
            [
                NumberWord<PowerHardening>.Stress("strength coefficient", "strengthCoefficient", "600 MPa", law => law.StrengthCoefficient),
                NumberWord<PowerHardening>.Plain("hardening exponent", "hardeningExponent", "0.2", law => law.HardeningExponent),
            ],
            (modulus, numbers) => new(modulus, Pressure.FromPascals(numbers[0]), numbers[1]),
            law => law.FittedStrengthCoefficient.Pascals.Equals(law.StrengthCoefficient.Pascals)),
        new LawWords<RambergOsgood>(
            "proof stress",
            [
                NumberWord<RambergOsgood>.Stress("proof stress", "proofStress", "240 MPa", law => law.YieldStress),
                NumberWord<RambergOsgood>.Plain("exponent", "exponent", "12", law => law.Exponent),
            ],
            (modulus, numbers) => new(modulus, Pressure.FromPascals(numbers[0]), numbers[1])),
        new LawWords<HotRolledSteel>(
            "plateau stress",
            [
                NumberWord<HotRolledSteel>.Stress("plateau stress", "plateauStress", "290 MPa", law => law.PlateauStress),
                NumberWord<HotRolledSteel>.Stress("ultimate strength", "ultimateStrength", "410 MPa", law => law.UltimateStrength),
            ],
            (modulus, numbers) => new(modulus, Pressure.FromPascals(numbers[0]), Pressure.FromPascals(numbers[1])),
            law => law.Equals(new HotRolledSteel(law.ElasticModulus, law.PlateauStress, law.UltimateStrength))),
        new LawWords<LinearHardening>(
            "tangent modulus",
            [
                NumberWord<LinearHardening>.Stress("yield", "yieldStress", "280 MPa", law => law.YieldStress),
                NumberWord<LinearHardening>.Stress("tangent modulus", "tangentModulus", "2 GPa", law => law.TangentModulus, orZero: true),
            ],
            (modulus, numbers) => new(modulus, Pressure.FromPascals(numbers[0]), Pressure.FromPascals(numbers[1]))),
        new LawWords<PerfectlyPlastic>(
            "yield",
            [NumberWord<PerfectlyPlastic>.Stress("yield", "yieldStress", "280 MPa", law => law.YieldStress)],
            (modulus, numbers) => new(modulus, Pressure.FromPascals(numbers[0]))),
    ];

    public Type Law { get; } = law;

    /// <summary>The word that tells the law.</summary>
    public string Mark { get; } = mark;

    public abstract IReadOnlyList<string> Numbers { get; }

    /// <summary>The words for a law; null where a file has none.</summary>
    public static LawWords? Of(StressStrainLaw law) => All.FirstOrDefault(words => words.Law == law.GetType() && words.CanWrite(law));

    /// <summary>How to make the law a file means; null after a fault.</summary>
    public static Func<Pressure, StressStrainLaw>? Read(JobObject material)
    {
        foreach (LawWords other in All)
        {
            material.Find(other.Mark);
        }

        return (All.FirstOrDefault(words => material.Has(words.Mark)) ?? All[All.Count - 1]).Numbered(material);
    }

    public abstract IEnumerable<(string Parameter, string Word)> Parameters { get; }

    public abstract IEnumerable<WrittenNumber> Write(StressStrainLaw law);

    private protected abstract bool CanWrite(StressStrainLaw law);

    private protected abstract Func<Pressure, StressStrainLaw>? Numbered(JobObject material);
}

/// <param name="mark">The word that tells the law.</param>
/// <param name="numbers">Its numbers beside the elastic modulus.</param>
/// <param name="make">Makes it of the modulus and the numbers in SI units.</param>
/// <param name="isWritable">Whether these numbers say all of it; null for always.</param>
/// <typeparam name="T">The law.</typeparam>
internal sealed class LawWords<T>(string mark, NumberWord<T>[] numbers, Func<Pressure, double[], T> make, Func<T, bool>? isWritable = null)
    : LawWords(typeof(T), mark)
    where T : StressStrainLaw
{
    public override IReadOnlyList<string> Numbers => [.. numbers.Select(number => number.Word)];

    public override IEnumerable<(string Parameter, string Word)> Parameters => numbers.Select(number => (number.Parameter, number.Word));

    public override IEnumerable<WrittenNumber> Write(StressStrainLaw law) => numbers.Select(number => number.Write((T)law));

    private protected override bool CanWrite(StressStrainLaw law) => isWritable is null || isWritable((T)law);

    private protected override Func<Pressure, StressStrainLaw>? Numbered(JobObject material)
    {
        double?[] values = [.. numbers.Select(number => number.Read(material))];
        return Array.TrueForAll(values, value => value is not null)
            ? modulus => make(modulus, [.. values.Select(value => value!.Value)])
            : null;
    }
}
