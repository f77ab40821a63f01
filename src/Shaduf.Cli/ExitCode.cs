namespace Shaduf.Cli;

/// <summary>What the command's exit code means.</summary>
internal static class ExitCode
{
    /// <summary>Done.</summary>
    public const int Done = 0;

    /// <summary>Our fault: a defect of the program, or a published case missed.</summary>
    public const int OurFault = 1;

    /// <summary>The input is bad; nothing was written.</summary>
    public const int BadInput = 2;

    /// <summary>Designed, but at least one finding says stop.</summary>
    public const int Stop = 3;
}
