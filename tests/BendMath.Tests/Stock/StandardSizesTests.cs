using System.Globalization;
using BendMath.Stock.Standard;

namespace BendMath.Tests.Stock;

/// <summary>
/// What people type and what it means. The spellings are common practice, no source; the sizes are those of
/// <c>Handbook/standard-sizes.csv</c>.
/// </summary>
public sealed class StandardSizesTests
{
    public static TheoryData<string, string> Accepted { get; } = new()
    {
        { "L30x30x3", "EN 10056-1 L30x30x3" },
        { "l30X30X3", "EN 10056-1 L30x30x3" },
        { " L 30 x 30 x 3 ", "EN 10056-1 L30x30x3" },
        { "L 30×30×3 mm", "EN 10056-1 L30x30x3" },
        { "L30*30*3", "EN 10056-1 L30x30x3" },
        { "30 x 30 x 3 mm angle", "EN 10056-1 L30x30x3" },
        { "30mmx30mmx3mm angle", "EN 10056-1 L30x30x3" },
        { "angle 30 by 30 by 3", "EN 10056-1 L30x30x3" },
        { "ANGLE IRON 30x30x3", "EN 10056-1 L30x30x3" },
        { "Angle-30x30x3", "EN 10056-1 L30x30x3" },
        { "L 30 x 30 x 3 (EN 10056)", "EN 10056-1 L30x30x3" },
        { "L30х30х3", "EN 10056-1 L30x30x3" },
        { "RSA 30x30x3", "EN 10056-1 L30x30x3" },
        { "∟30x30x3", "EN 10056-1 L30x30x3" },
        { "EA 30x3", "EN 10056-1 L30x30x3" },
        { "L30x3", "EN 10056-1 L30x30x3" },
        { "L30,0x30,0x3,0", "EN 10056-1 L30x30x3" },
        { "EN 10056-1 L30x30x3", "EN 10056-1 L30x30x3" },
        { "L30x30x3, EN 10056", "EN 10056-1 L30x30x3" },
        { "L45x45x4,5", "EN 10056-1 L45x45x4.5" },
        { "L30x20x4", "EN 10056-1 L30x20x4" },
        { "L20x30x4", "EN 10056-1 L30x20x4" },
        { "unequal angle 20 x 30 x 4", "EN 10056-1 L30x20x4" },
        { "l2x2x1/8", "AISC v16.0 L2X2X1/8" },
        { "L 2 x 2 x 1/8", "AISC v16.0 L2X2X1/8" },
        { "L2x2x.125", "AISC v16.0 L2X2X1/8" },
        { "L2x2x0.125", "AISC v16.0 L2X2X1/8" },
        { "L2.00x2.00x0,125", "AISC v16.0 L2X2X1/8" },
        { "L2x2x⅛", "AISC v16.0 L2X2X1/8" },
        { "2\" x 2\" x 1/8\" angle", "AISC v16.0 L2X2X1/8" },
        { "2 in x 2 in x 1/8 in angle", "AISC v16.0 L2X2X1/8" },
        { "2 in. x 2 in. x 1/8 in. angle", "AISC v16.0 L2X2X1/8" },
        { "2''x2''x1/8'' angle", "AISC v16.0 L2X2X1/8" },
        { "2inx2inx1/8in angle iron", "AISC v16.0 L2X2X1/8" },
        { "2″×2″×⅛″ L", "AISC v16.0 L2X2X1/8" },
        { "AISC L2x2x1/8", "AISC v16.0 L2X2X1/8" },
        { "1/8 x 2 x 2 angle", "AISC v16.0 L2X2X1/8" },
        { "L2x2x3/16", "AISC v16.0 L2X2X3/16" },
        { "L2x2x.188", "AISC v16.0 L2X2X3/16" },
        { "L2x2x0.187", "AISC v16.0 L2X2X3/16" },
        { "L2x2x6/32", "AISC v16.0 L2X2X3/16" },
        { "2-1/2 x 2 x 3/16 angle", "AISC v16.0 L2-1/2X2X3/16" },
        { "L2½×2×3⁄16", "AISC v16.0 L2-1/2X2X3/16" },
        { "L3x4x1/4", "AISC v16.0 L4X3X1/4" },
        { "1x1x1/8", "US bar-size L1x1x1/8" },
        { "L1-1/2x1-1/2x1/8", "US bar-size L1-1/2x1-1/2x1/8" },
        { "L 1 1/2 x 1 1/2 x 1/8", "US bar-size L1-1/2x1-1/2x1/8" },
        { "L1½x1½x⅛", "US bar-size L1-1/2x1-1/2x1/8" },
        { "L1.5x1.5x.125", "US bar-size L1-1/2x1-1/2x1/8" },
        { "L 1,5 x 1,5 x 0,125 in", "US bar-size L1-1/2x1-1/2x1/8" },
        { "CHS 33.7x3", "EN 10219-2 CHS 33.7x3" },
        { "chs33,7×3,0", "EN 10219-2 CHS 33.7x3" },
        { "33.7 x 3 mm tube", "EN 10219-2 CHS 33.7x3" },
        { "round tube 33.7x3", "EN 10219-2 CHS 33.7x3" },
        { "Ø33.7x3", "EN 10219-2 CHS 33.7x3" },
        { "⌀ 33.7 x 3", "EN 10219-2 CHS 33.7x3" },
        { "CFCHS 42.4x3.2", "EN 10219-2 CHS 42.4x3.2" },
        { "EN 10210 chs 42,4x3,2", "EN 10210-2 CHS 42.4x3.2" },
        { "CHS 42.4x3.2 EN 10219-2", "EN 10219-2 CHS 42.4x3.2" },
        { "SHS 25x25x2", "EN 10219-2 SHS 25x25x2" },
        { "SHS 25x2", "EN 10219-2 SHS 25x25x2" },
        { "25x25x2 square tube", "EN 10219-2 SHS 25x25x2" },
        { "□25x25x2", "EN 10219-2 SHS 25x25x2" },
        { "box section 25x25x2", "EN 10219-2 SHS 25x25x2" },
        { "RHS 25x25x2", "EN 10219-2 SHS 25x25x2" },
        { "rhs 25 x 50 x 2.5", "EN 10219-2 RHS 50x25x2.5" },
        { "rectangular tube 50x25x2,5", "EN 10219-2 RHS 50x25x2.5" },
        { "HSS2x2x1/8", "AISC v16.0 HSS2X2X1/8" },
        { "hss 2 × 2 × .125", "AISC v16.0 HSS2X2X1/8" },
        { "2 x 2 x 1/8 square tubing", "AISC v16.0 HSS2X2X1/8" },
        { "HSS 1.5x2x3/16", "AISC v16.0 HSS2X1-1/2X3/16" },
        { "HSS1.9x.188", "AISC v16.0 HSS1.900X0.188" },
        { "HSS1.900x3/16", "AISC v16.0 HSS1.900X0.188" },
        { "HSS7x5/16", "AISC v16.0 HSS7.000X0.312" },
        { "HSS 7x0.313", "AISC v16.0 HSS7.000X0.312" },
        { "Pipe 2 STD", "AISC v16.0 Pipe2STD" },
        { "2-1/2 std pipe", "AISC v16.0 Pipe2-1/2STD" },
        { "2½\" STD", "AISC v16.0 Pipe2-1/2STD" },
        { "Pipe 2-1/2 extra strong", "AISC v16.0 Pipe2-1/2XS" },
        { "2 in XXS pipe", "AISC v16.0 Pipe2XXS" },
        { "NPS 2 Sch 40", "ASME B36.10M NPS 2 Sch 40" },
        { "nps2sch40", "ASME B36.10M NPS 2 Sch 40" },
        { "2\" Sch. 40 pipe", "ASME B36.10M NPS 2 Sch 40" },
        { "2 in schedule 40 pipe", "ASME B36.10M NPS 2 Sch 40" },
        { "Sch 40 2\" pipe", "ASME B36.10M NPS 2 Sch 40" },
        { "2 in sch STD", "AISC v16.0 Pipe2STD" },
        { "Schedule 40 pipe, 2 in", "ASME B36.10M NPS 2 Sch 40" },
        { "DN 50 Sch 40", "ASME B36.10M NPS 2 Sch 40" },
        { "DN50 Sch-80", "ASME B36.10M NPS 2 Sch 80" },
        { "1-1/4 NPS Sch 80", "ASME B36.10M NPS 1-1/4 Sch 80" },
        { "Round 10", "EN bars Round 10" },
        { "10 mm round bar", "EN bars Round 10" },
        { "rod 10", "EN bars Round 10" },
        { "Ø10", "EN bars Round 10" },
        { "Square 12", "EN bars Square 12" },
        { "12mm square bar", "EN bars Square 12" },
        { "12 sq", "EN bars Square 12" },
        { "Flat 40x8", "EN bars Flat 40x8" },
        { "flat bar 8 x 40 mm", "EN bars Flat 40x8" },
        { "40x8", "EN bars Flat 40x8" },
        { "FB 40x8", "EN bars Flat 40x8" },
        { "½ in round", "US bars Round 1/2 in" },
        { "Round 1/2", "US bars Round 1/2 in" },
        { "0.5\" round bar", "US bars Round 1/2 in" },
        { "Square 2.5 in", "US bars Square 2-1/2 in" },
        { "Flat 2x1/4", "US bars Flat 2x1/4 in" },
        { "2 in x 1/4 in flat", "US bars Flat 2x1/4 in" },
        { "US bars Round 3", "US bars Round 3 in" },
    };

    /// <summary>Near misses, and the size their message must name.</summary>
    public static TheoryData<string, string> Refused { get; } = new()
    {
        { "L30x30x3.5", "EN 10056-1 L30x30x3" },
        { "L31x30x3", "EN 10056-1 L30x30x3" },
        { "L30x30", "EN 10056-1 L30x30x3" },
        { "L30x30x", "EN 10056-1 L30x30x3" },
        { "L30xx30x3", "EN 10056-1 L30x30x3" },
        { "L30 30 3", "EN 10056-1 L30x30x3" },
        { "L30x30x-3", "EN 10056-1 L30x30x3" },
        { "L30x30x3x6000", "EN 10056-1 L30x30x3" },
        { "LL30x30x3", "EN 10056-1 L30x30x3" },
        { "L3x3x0.3 cm", "AISC v16.0 L3X3X" },
        { "L30 mm x 30 mm x 1/8 in", "EN 10056-1 L30x30x3" },
        { "L30x30x3,5,1", "EN 10056-1 L30x30x3" },
        { "UPN L30x30x3", "EN 10056-1 L30x30x3" },
        { "AISC L30x30x3", "AISC v16.0" },
        { "L2x2x5/64", "AISC v16.0 L2X2X1/8" },
        { "L2x2x0.13", "AISC v16.0 L2X2X1/8" },
        { "L2x2x1/0", "AISC v16.0 L2X2X" },
        { "L2x2x1/8 mm", "AISC v16.0 L2X2X1/8" },
        { "Equal angle 30x20x4", "EN 10056-1 L30x20x4" },
        { "SHS 40x20x3", "SHS 40x40x2.5" },
        { "SHS 60x40x4", "RHS 60x40x4" },
        { "L100x100x10 S235", "EN 10056-1 L100x100x10" },
        { "Rohr 33,7 x 3", "EN 10219-2 CHS 33.7x3" },
        { "L2x2x1/8x1/8", "AISC v16.0 L2X2X1/8" },
        { "L", "AISC v16.0 L8X8X1" },
        { "1\" angle", "US bar-size L1x1x1/8" },
        { "CHS 33.7", "EN 10219-2 CHS 33.7x3" },
        { "CHS 33.7x33.7x3", "CHS 33.7x3" },
        { "CHS 34x3", "EN 10219-2 CHS 33.7x3" },
        { "HSS 5x1/4", "AISC v16.0 HSS4.500X0.237" },
        { "Pipe 2", "AISC v16.0 Pipe2STD" },
        { "2 in pipe", "AISC v16.0 Pipe2STD" },
        { "NPS 2 Sch 160", "ASME B36.10M NPS 2 Sch 40" },
        { "NPS 2 Sch", "ASME B36.10M NPS 2 Sch 40" },
        { "DN 55 Sch 40", "ASME B36.10M NPS 2 Sch 40" },
        { "DN 50 x 2 Sch 40", "ASME B36.10M NPS 2 Sch 40" },
        { "Round 3", "US bars Round 3 in" },
        { "Round 11", "EN bars Round 10" },
        { "Flat 4x1", "US bars Flat 4x1 in" },
        { "Flat 40x40", "EN 10056-1 L40x40x4" },
        { "Sqare 12", "EN bars Square 12" },
    };

    [Theory]
    [MemberData(nameof(Accepted))]
    public void A_spelling_means_its_size(string text, string fullName)
    {
        Assert.Equal(fullName, StandardSizes.Find(text).FullName);
        Assert.True(StandardSizes.TryFind(text, out StandardSize? size));
        Assert.Same(StandardSizes.Find(text), size);
        Assert.Same(size, StandardSizes.Find(text, size!.System));
        Assert.True(StandardSizes.TryFind(text, null, out _, out string? fault));
        Assert.Null(fault);
    }

    [Theory]
    [MemberData(nameof(Refused))]
    public void A_near_miss_is_refused_with_the_nearest_size(string text, string nearest)
    {
        ArgumentException refused = Assert.Throws<ArgumentException>(() => StandardSizes.Find(text));
        Assert.Equal("designation", refused.ParamName);
        Assert.Contains($"\"{text}\"", refused.Message, StringComparison.Ordinal);
        Assert.Contains(nearest, refused.Message, StringComparison.Ordinal);
        Assert.False(StandardSizes.TryFind(text, out StandardSize? size));
        Assert.Null(size);
        Assert.False(StandardSizes.TryFind(text, null, out _, out string? fault));
        Assert.Contains(nearest, fault, StringComparison.Ordinal);
    }

    [Fact]
    public void There_are_many_of_both()
    {
        Assert.True(Accepted.Count >= 80);
        Assert.True(Refused.Count >= 30);
    }

    [Fact]
    public void A_designation_of_two_systems_needs_its_system_and_the_message_names_both()
    {
        string[] shared =
            [.. StandardSizes.All.GroupBy(size => size.Designation).Where(sizes => sizes.Count() > 1).Select(sizes => sizes.Key)];
        Assert.Equal(
            ["CHS 168.3x6.3", "CHS 244.5x8", "CHS 323.9x8", "CHS 42.4x3.2", "CHS 88.9x6.3", "RHS 200x120x10", "RHS 200x150x8",
                "RHS 60x40x4", "SHS 200x200x10"],
            shared.Order(StringComparer.Ordinal));
        Assert.All(shared, designation =>
        {
            string message = Assert.Throws<ArgumentException>(() => StandardSizes.Find(designation)).Message;
            Assert.Contains($"EN 10219-2 {designation} or EN 10210-2 {designation}", message, StringComparison.Ordinal);
            Assert.Equal(SizeSystem.En10210, StandardSizes.Find(designation, SizeSystem.En10210).System);
            Assert.Equal(SizeSystem.En10219, StandardSizes.Find(designation, SizeSystem.En10219).System);
            Assert.NotEqual(StandardSizes.Find(designation, SizeSystem.En10210), StandardSizes.Find(designation, SizeSystem.En10219));
        });
    }

    [Theory]
    [InlineData("2x2x1/8", "AISC v16.0 L2X2X1/8 or AISC v16.0 HSS2X2X1/8")]
    [InlineData("1-1/2x1-1/2x1/8", "AISC v16.0 HSS1-1/2X1-1/2X1/8 or US bar-size L1-1/2x1-1/2x1/8")]
    [InlineData("50x50x5", "EN 10056-1 L50x50x5 or EN 10219-2 SHS 50x50x5")]
    [InlineData("12", "EN bars Round 12 or EN bars Square 12")]
    public void Dimensions_of_two_shapes_need_a_word(string text, string both)
    {
        Assert.Contains(both, Assert.Throws<ArgumentException>(() => StandardSizes.Find(text)).Message, StringComparison.Ordinal);
        Assert.False(StandardSizes.TryFind(text, out _));
    }

    [Fact]
    public void A_size_of_another_system_is_named()
    {
        string message = Assert.Throws<ArgumentException>(() => StandardSizes.Find("CHS 33.7x3", SizeSystem.En10210)).Message;
        Assert.Contains("EN 10210-2 CHS 42.4x3.2", message, StringComparison.Ordinal);
        Assert.Throws<ArgumentException>(() => StandardSizes.Find("EN 10219-2 CHS 42.4x3.2", SizeSystem.En10210));
        Assert.Throws<ArgumentException>(() => StandardSizes.Find("EN 10210-2 CFCHS 42.4x3.2"));
    }

    [Fact]
    public void Every_size_is_found_by_its_names_and_by_them_spelled_with_more_room() => Assert.All(StandardSizes.All, size =>
    {
        Assert.Same(size, StandardSizes.Find(size.ToString()));
        Assert.Same(size, StandardSizes.Find(size.FullName.ToLowerInvariant()));
        Assert.Same(size, StandardSizes.Find(size.Designation, size.System));
        string roomy = System.Text.RegularExpressions.Regex.Replace(" " + size.Designation + "  ", "(?<=[0-9])[xX](?=[0-9])", "  ×\t");
        Assert.Same(size, StandardSizes.Find(roomy, size.System));
    });

    [Fact]
    public void Lists_by_system_hold_every_size_once()
    {
        Assert.Equal(StandardSizes.All, StandardSizes.Systems.SelectMany(StandardSizes.BySystem));
        Assert.All(Enum.GetValues<SizeKind>(),
            kind => Assert.Contains(StandardSizes.All, size => size.Stock.GetType().Name == kind.ToString()));
        Assert.Equal(StandardSizes.All.Count,
            StandardSizes.All.Select(size => size.FullName).Distinct(StringComparer.OrdinalIgnoreCase).Count());
        Assert.All(StandardSizes.All, size => Assert.NotEmpty(size.Assumptions));
    }

    [Fact]
    public void A_size_without_a_design_wall_says_so()
    {
        StandardSize size = StandardSizes.Find("NPS 2 Sch 40");
        Assert.Null(size.DesignWall);
        Assert.Contains("NPS 2 Sch 40", Assert.Throws<InvalidOperationException>(size.WithDesignWall).Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("")]
    [InlineData("de-DE")]
    [InlineData("tr-TR")]
    public void Every_culture_reads_and_refuses_alike(string culture)
    {
        CultureInfo before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo(culture);
            Assert.All(Accepted, row => Assert.Equal(row.Data.Item2, StandardSizes.Find(row.Data.Item1).FullName));
            Assert.All(Accepted, row => Assert.Equal(row.Data.Item2, StandardSizes.Find(row.Data.Item1.ToUpperInvariant()).FullName));
            Assert.All(Refused,
                row =>
                    Assert.Contains(row.Data.Item2, Assert.Throws<ArgumentException>(() => StandardSizes.Find(row.Data.Item1)).Message,
                        StringComparison.Ordinal));
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }
}
