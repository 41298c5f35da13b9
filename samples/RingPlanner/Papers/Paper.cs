namespace RingPlanner.Papers;

/// <summary>What a plan is written on: console, Markdown, HTML. The pages say what, the paper says how.</summary>
internal abstract class Paper
{
    /// <summary>The name of a job.</summary>
    public abstract void Title(string text);

    public abstract void Heading(string text);

    /// <summary>A gap between two jobs.</summary>
    public abstract void Gap();

    /// <summary>A label and what it says.</summary>
    public abstract void Fact(string label, string text);

    /// <summary>A sentence behind a mark, such as a caution.</summary>
    public abstract void Marked(string mark, string text);

    public abstract void Sentence(string text);

    public abstract void Show(Listing listing);

    /// <summary>Whether it can show drawings.</summary>
    public virtual bool ShowsPictures => false;

    /// <summary>A drawing as SVG; a paper that cannot show drawings leaves it out.</summary>
    public virtual void Picture(string caption, string svg)
    {
    }
}

/// <summary>A table: columns with their headings and rows of cells.</summary>
internal sealed record Listing(IReadOnlyList<Column> Columns, IReadOnlyList<IReadOnlyList<string>> Rows);

/// <summary>A column. Lines of its heading are separated by line feeds.</summary>
internal sealed record Column(string Heading, bool IsNumber = false, bool MayWrap = false);
