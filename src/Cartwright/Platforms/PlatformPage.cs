using System.Text;

namespace Cartwright.Platforms;

/// <summary>The page of a platform, made from its tables.</summary>
public static class PlatformPage
{
    /// <summary>Writes the page as Markdown.</summary>
    /// <param name="platform">The platform.</param>
    public static string Markdown(Platform platform)
    {
        var page = new StringBuilder();
        page.Append("# ").AppendLine(platform.Facts.Name);
        return page.ToString();
    }
}
