namespace BendMath.Forming;

/// <summary>What a model says of one bar on one die: the formed bar, or why the model cannot form it.</summary>
internal readonly struct FormingTrial
{
    private FormingTrial(FormedBend? formed, string? refusal)
    {
        Formed = formed;
        Refusal = refusal;
    }

    /// <summary>The formed bar, or null when refused.</summary>
    public FormedBend? Formed { get; }

    /// <summary>Why not, or null when formed.</summary>
    public string? Refusal { get; }

    public static implicit operator FormingTrial(FormedBend formed) => new(formed, null);

    public static FormingTrial Refused(string why) => new(null, why);
}
