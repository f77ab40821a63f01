using Microsoft.AspNetCore.Http.Metadata;

namespace Shaduf.Desk;

/// <summary>Far more than is kept: a file that is too large is answered with a page and not with a broken line.</summary>
internal sealed class LargestUpload : IRequestSizeLimitMetadata
{
    /// <summary>Largest request that is read [bytes].</summary>
    public long? MaxRequestBodySize => 1024L * 1024 * 1024;
}
