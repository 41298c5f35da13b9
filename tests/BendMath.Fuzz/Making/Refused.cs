using System.Reflection;

namespace BendMath.Fuzz.Making;

/// <summary>A door refused what was drawn, by an exception its documentation promises.</summary>
internal sealed class Refused(MemberInfo door, Exception thrown) : Exception(thrown.Message, thrown)
{
    public MemberInfo Door => door;
}

/// <summary>A door threw what it may not throw.</summary>
internal sealed class Broken(Made call, Exception thrown) : Exception($"{thrown.GetType().Name}: {thrown.Message}", thrown)
{
    public Made Call => call;
}

/// <summary>A value was drawn that there is no way to, such as a list entry of a list that came out empty.</summary>
internal sealed class OutOfReach(string what) : Exception(what);
