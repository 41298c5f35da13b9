using System.Reflection;
using UnitsNet;

namespace BendMath.Tests.Sections;

/// <summary>A section costs the memory of the objects it hands out and not a byte more: nothing is left for the collector.</summary>
public sealed class AllocationTests
{
    private static readonly Func<object, object> Clone = typeof(object)
        .GetMethod("MemberwiseClone", BindingFlags.Instance | BindingFlags.NonPublic)!.CreateDelegate<Func<object, object>>();

    [Fact]
    public void Rolled_angle_and_its_figures_allocate_what_they_return()
    {
        Assert.True(Figures(Angle().FlangeOut.Properties) > 0);
        _ = Size(Angle());
        long before = GC.GetAllocatedBytesForCurrentThread();
        EqualAngle angle = Angle();
        double sum = Figures(angle.FlangeOut.Properties);
        long allocated = GC.GetAllocatedBytesForCurrentThread() - before;
        Assert.True(sum > 0);
        Assert.Equal(Size(angle), allocated);
    }

    private static EqualAngle Angle() =>
        new(Length.FromMillimeters(30), Length.FromMillimeters(3), AngleFillets.Of(Length.FromMillimeters(5), Length.FromMillimeters(2.5)));

    private static double Figures(SectionProperties p) =>
        p.Area.Value + p.Depth.Value + p.Width.Value + p.CentroidFromInside.Value + p.CentroidAxial.Value
        + p.SecondMomentAboutBendingAxis.Value + p.SecondMomentAboutRadialAxis.Value + p.ProductOfInertia.Value
        + p.PrincipalSecondMomentMajor.Value + p.PrincipalSecondMomentMinor.Value + p.PrincipalAxisAngle.Value
        + p.ElasticModulusInside.Value + p.ElasticModulusOutside.Value + p.ElasticModulusAboutRadialAxisNear.Value
        + p.ElasticModulusAboutRadialAxisFar.Value
        + p.PrincipalElasticModulusMajor.Value + p.PrincipalElasticModulusMinor.Value
        + p.EqualAreaAxisFromInside.Value + p.PlasticModulus.Value + p.EqualAreaAxisAxial.Value + p.PlasticModulusAboutRadialAxis.Value
        + p.ShapeFactor
        + p.RadiusOfGyrationAboutBendingAxis.Value + p.RadiusOfGyrationAboutRadialAxis.Value
        + p.PrincipalRadiusOfGyrationMajor.Value + p.PrincipalRadiusOfGyrationMinor.Value + p.Perimeter.Value + p.OuterPerimeter.Value;

    /// <summary>
    /// Bytes of all objects that can be reached, but for texts, orientations and empty arrays, which are shared: the size of each is what
    /// its copy allocates.
    /// </summary>
    private static long Size(object root)
    {
        HashSet<object> seen = new(ReferenceEqualityComparer.Instance);
        Queue<object> open = new([root]);
        long total = 0;
        while (open.TryDequeue(out object? item))
        {
            if (item is string or Orientation or Array { Length: 0 } || !seen.Add(item))
            {
                continue;
            }

            long before = GC.GetAllocatedBytesForCurrentThread();
            object copy = Clone(item);
            total += GC.GetAllocatedBytesForCurrentThread() - before;
            Assert.IsType(item.GetType(), copy);
            foreach (object part in Parts(item))
            {
                open.Enqueue(part);
            }
        }

        return total;
    }

    private static IEnumerable<object> Parts(object item)
    {
        if (item is Array array)
        {
            return array.GetType().GetElementType()!.IsValueType ? [] : array.Cast<object?>().OfType<object>();
        }

        List<object> parts = [];
        for (Type? type = item.GetType(); type is not null; type = type.BaseType)
        {
            parts.AddRange(type
                .GetFields(BindingFlags.Instance | BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.DeclaredOnly)
                .Where(field => !field.FieldType.IsValueType)
                .Select(field => field.GetValue(item))
                .OfType<object>());
        }

        return parts;
    }
}
