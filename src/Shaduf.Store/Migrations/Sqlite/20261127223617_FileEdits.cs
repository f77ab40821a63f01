using System;
using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Shaduf.Store.Migrations.Sqlite
{
    /// <inheritdoc />
    public partial class FileEdits : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.AddColumn<int>(name: "TakesBack", table: "edit", type: "INTEGER", nullable: true);

            migrationBuilder.CreateTable(
                name: "file_edit",
                columns: table => new
                {
                    StationId = table.Column<Guid>(type: "TEXT", nullable: false),
                    Number = table.Column<int>(type: "INTEGER", nullable: false),
                    Name = table.Column<string>(type: "TEXT", nullable: false),
                    Before = table.Column<byte[]>(type: "BLOB", nullable: true),
                    After = table.Column<byte[]>(type: "BLOB", nullable: true),
                },
                constraints: table =>
                {
                    table.PrimaryKey(
                        "PK_file_edit",
                        x => new
                        {
                            x.StationId,
                            x.Number,
                            x.Name,
                        }
                    );
                    table.ForeignKey(
                        name: "FK_file_edit_edit_StationId_Number",
                        columns: x => new { x.StationId, x.Number },
                        principalTable: "edit",
                        principalColumns: new[] { "StationId", "Number" },
                        onDelete: ReferentialAction.Cascade
                    );
                }
            );
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropTable(name: "file_edit");

            migrationBuilder.DropColumn(name: "TakesBack", table: "edit");
        }
    }
}
